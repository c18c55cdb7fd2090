using Headroom.Domain.Findings;
using Headroom.Domain.Jobs;
using Headroom.Domain.Ledgers;
using Headroom.Engineering.Power;

namespace Headroom.Engineering.Remedies.Kinds;

/// <summary>An injector of its own for a device whose port gives too little, in the closet or in the room of the device, where little of a long run is left before it.</summary>
internal sealed class OwnInjector : IRemedyKind
{
    /// <inheritdoc/>
    public IEnumerable<RemedyIdea> For(LedgerEntry entry, RemedyCase at)
    {
        if (!(Entries.IsOfPower(entry) || Entries.IsOfVolts(entry)) || entry.Kind is "kept" or "back")
            yield break;
        foreach (var endpoint in at.EndpointsOf(entry))
        {
            if (endpoint.Port?.Switch is not { } unit || at.PatchOf(endpoint) is not { } patch || endpoint.Model.Power is not { } power)
                continue;
            var id = $"{endpoint.Id}-feed";
            if (at.Design.Injectors.Any(injector => injector.Id == id))
                continue;
            foreach (var model in at.Catalogue.Injectors.Values.Where(model => model is { Ports: 1, Supply.Input: not "dc" } && Suits(model, power)))
            {
                var injector = Delta.Injector(id, model.Id) with { From = [new PortRef(unit.Id, endpoint.Port.Port)] };
                RemedyIdea With(PlacedInjector placed, string where) => new("injector", $"{endpoint.Id}: an injector {model.Id} of its own, in {where}", Delta.Of(at) with
                {
                    Injectors = [placed],
                    Patch = [new Patch(patch, new PortRef(id, null), Place.None)],
                })
                {
                    Cautions = model.Passive is null ? [] : [CautionTable.AlwaysOn],
                };
                if (!Entries.IsOfVolts(entry))
                    yield return With(injector with { Standing = new Standing(unit.Space, null, null), FedBy = unit.Placed.FedBy }, unit.Space ?? "the closet");
                if (endpoint.Run?.Drop is { To: { } far } drop && far != drop.From)
                    yield return With(injector with { Standing = new Standing(far, null, null) }, $"{far}, at its end of {drop.Id}") with { Rough = $"whether there is a socket in {far} is to be seen there; nothing of a standby supply reaches it" };
            }
        }
    }

    private static bool Suits(Domain.Catalogues.InjectorModel model, Domain.Catalogues.PowerIntake power) =>
        power.Class is { } cls ? model.Poe is { } type && PoeTypes.Of(type).HighestClass >= (cls == 0 ? 3 : cls) : model.Passive is not null && power.Passive is not null;
}

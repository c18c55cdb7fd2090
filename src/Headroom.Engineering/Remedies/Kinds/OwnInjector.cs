using Headroom.Domain.Findings;
using Headroom.Domain.Jobs;
using Headroom.Domain.Ledgers;
using Headroom.Engineering.Power;

namespace Headroom.Engineering.Remedies.Kinds;

/// <summary>An injector of its own for a device whose port gives too little.</summary>
internal sealed class OwnInjector : IRemedyKind
{
    /// <inheritdoc/>
    public IEnumerable<RemedyIdea> For(LedgerEntry entry, RemedyCase at)
    {
        if (!Entries.IsOfPower(entry) || entry.Kind is "kept" or "back")
            yield break;
        foreach (var endpoint in at.EndpointsOf(entry))
        {
            if (endpoint.Port?.Switch is not { } unit || at.PatchOf(endpoint) is not { } patch || endpoint.Model.Power is not { } power)
                continue;
            var id = $"{endpoint.Id}-feed";
            if (at.Design.Injectors.Any(injector => injector.Id == id))
                continue;
            var standing = new Standing(unit.Space, null, null);
            foreach (var model in at.Catalogue.Injectors.Values.Where(model => model is { Ports: 1, Supply.Input: not "dc" } && Suits(model, power)))
            {
                var injector = Delta.Injector(id, model.Id) with { Standing = standing, FedBy = unit.Placed.FedBy, From = [new PortRef(unit.Id, endpoint.Port.Port)] };
                yield return new("injector", $"{endpoint.Id}: an injector {model.Id} of its own, in {unit.Space ?? "the closet"}", Delta.Of(at) with
                {
                    Injectors = [injector],
                    Patch = [new Patch(patch, new PortRef(id, null), Place.None)],
                })
                {
                    Cautions = model.Passive is null ? [] : [CautionTable.AlwaysOn],
                };
            }
        }
    }

    private static bool Suits(Domain.Catalogues.InjectorModel model, Domain.Catalogues.PowerIntake power) =>
        power.Class is { } cls ? model.Poe is { } type && PoeTypes.Of(type).HighestClass >= (cls == 0 ? 3 : cls) : model.Passive is not null && power.Passive is not null;
}

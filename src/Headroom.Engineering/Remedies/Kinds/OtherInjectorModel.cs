using Headroom.Domain.Ledgers;

namespace Headroom.Engineering.Remedies.Kinds;

/// <summary>Another injector or midspan model, such as one of more volts.</summary>
internal sealed class OtherInjectorModel : IRemedyKind
{
    /// <inheritdoc/>
    public IEnumerable<RemedyIdea> For(LedgerEntry entry, RemedyCase at)
    {
        if (!Entries.IsOfPower(entry) && !Entries.IsOfVolts(entry) && !Entries.IsOfHeat(entry))
            yield break;
        var feeds = at.EndpointsOf(entry).Select(endpoint => endpoint.Port?.Injector?.Id).OfType<string>().ToHashSet();
        foreach (var unit in at.Bound.Injectors.Where(unit => unit.Id == entry.Subject || feeds.Contains(unit.Id)))
        {
            foreach (var model in at.Catalogue.Injectors.Values.Where(model => model.Id != unit.Model.Id && model.Supply.Input == unit.Model.Supply.Input && model.Ports == unit.Model.Ports))
                yield return new("injector model", $"{unit.Id}: {model.Id} in place of {unit.Model.Id}", Delta.Of(at) with { Injectors = [Delta.Injector(unit.Id, model.Id)] })
                {
                    Cautions = model.Passive is null ? [] : [CautionTable.AlwaysOn],
                };
        }
    }
}

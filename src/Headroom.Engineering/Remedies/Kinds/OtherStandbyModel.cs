using Headroom.Domain.Ledgers;

namespace Headroom.Engineering.Remedies.Kinds;

/// <summary>More battery: another model of standby supply.</summary>
internal sealed class OtherStandbyModel : IRemedyKind
{
    /// <inheritdoc/>
    public IEnumerable<RemedyIdea> For(LedgerEntry entry, RemedyCase at)
    {
        if (!Entries.IsOfStandby(entry) && !Entries.IsOfHeat(entry) && !Entries.IsOfSound(entry))
            yield break;
        foreach (var supply in at.Design.Standby.Where(supply => supply.Id == entry.Subject || Entries.IsOfSound(entry)))
        {
            foreach (var model in at.Catalogue.Standby.Values.Where(model => model.Id != supply.Model && !model.GivesDc))
                yield return new("standby model", $"{supply.Id}: {model.Id} in place of {supply.Model}", Delta.Of(at) with { Standby = [Delta.Standby(supply.Id, model.Id) with { BatteryAge = Delta.Value<Domain.Quantities.Seconds>("0 years") }] })
                {
                    Cautions = [CautionTable.Battery],
                };
        }
    }
}

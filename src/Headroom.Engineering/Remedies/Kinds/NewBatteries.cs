using Headroom.Domain.Ledgers;
using Headroom.Domain.Quantities;

namespace Headroom.Engineering.Remedies.Kinds;

/// <summary>New batteries in a standby supply.</summary>
internal sealed class NewBatteries : IRemedyKind
{
    /// <inheritdoc/>
    public IEnumerable<RemedyIdea> For(LedgerEntry entry, RemedyCase at)
    {
        if (!Entries.IsOfStandby(entry))
            yield break;
        foreach (var supply in at.Design.Standby.Where(supply => supply.Id == entry.Subject && supply.BatteryAge?.Value.Value > 0))
        {
            var model = supply.Model is { } id ? at.Catalogue.Standby.GetValueOrDefault(id) : null;
            var block = model?.Battery is { } battery ? at.Catalogue.Batteries.GetValueOrDefault(battery)?.Body.Price : null;
            yield return new("batteries", $"{supply.Id}: new batteries", Delta.Of(at) with { Standby = [Delta.Standby(supply.Id) with { BatteryAge = Delta.Value<Seconds>("0 years") }] })
            {
                Minutes = (20, 60),
                Goods = [.. Enumerable.Repeat(block, model?.Blocks ?? 1)],
                Cautions = [CautionTable.Battery],
            };
        }
    }
}

using Headroom.Domain.Ledgers;

namespace Headroom.Engineering.Remedies.Kinds;

/// <summary>Another fan of the same volts in the place of the maker's.</summary>
internal sealed class OtherFan : IRemedyKind
{
    /// <inheritdoc/>
    public IEnumerable<RemedyIdea> For(LedgerEntry entry, RemedyCase at)
    {
        if (!Entries.IsOfSound(entry) && !Entries.IsOfHeat(entry))
            yield break;
        foreach (var unit in at.Bound.Switches.Where(unit => Entries.IsOfSound(entry) || unit.Id == entry.Subject))
        {
            if (unit.Model.Fan is not { } own || !at.Catalogue.Fans.TryGetValue(own, out var now))
                continue;
            foreach (var fan in at.Catalogue.Fans.Values.Where(fan => fan.Id != (unit.Placed.Fan ?? own) && fan.Rated.Value.Value.Equals(now.Rated.Value.Value)))
            {
                yield return new("other fan", $"{unit.Id}: fan {fan.Id} in place of {unit.Placed.Fan ?? own}", Delta.Switch(at, Delta.Switch(unit.Id) with { Fan = fan.Id }))
                {
                    Minutes = (30, 75),
                    Goods = [.. Enumerable.Repeat(fan.Body.Price, unit.Model.Sound?.Fans ?? 1)],
                    Cautions = [CautionTable.OpenCase],
                };
            }
        }
    }
}

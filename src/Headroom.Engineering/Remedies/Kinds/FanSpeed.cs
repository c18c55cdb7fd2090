using Headroom.Domain.Ledgers;

namespace Headroom.Engineering.Remedies.Kinds;

/// <summary>Another fan level of a switch: a lower one against sound, a higher one against heat.</summary>
internal sealed class FanSpeed : IRemedyKind
{
    /// <inheritdoc/>
    public IEnumerable<RemedyIdea> For(LedgerEntry entry, RemedyCase at)
    {
        if (!Entries.IsOfSound(entry) && !Entries.IsOfHeat(entry))
            yield break;
        foreach (var unit in at.Bound.Switches.Where(unit => Entries.IsOfSound(entry) || unit.Id == entry.Subject))
        {
            foreach (var level in unit.Model.Sound?.Levels ?? [])
            {
                if (unit.Model.Sound!.Levels.Count > 1 && level.Level != unit.Placed.Level)
                {
                    yield return new("fan level", $"{unit.Id}: fan level {level.Level}, held there", Delta.Switch(at, Delta.Switch(unit.Id) with { Level = level.Level }))
                    {
                        BuysNothing = true,
                        Minutes = Entries.Setting,
                        Rough = $"whether {unit.Model.Id} can be held at a level is for its manual to say",
                    };
                }
            }
        }
    }
}

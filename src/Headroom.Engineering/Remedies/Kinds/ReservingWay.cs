using Headroom.Domain.Jobs;
using Headroom.Domain.Ledgers;
using Headroom.Engineering.Power;

namespace Headroom.Engineering.Remedies.Kinds;

/// <summary>Another of the ways of reserving that the model offers.</summary>
internal sealed class ReservingWay : IRemedyKind
{
    /// <inheritdoc/>
    public IEnumerable<RemedyIdea> For(LedgerEntry entry, RemedyCase at)
    {
        if (!Entries.IsOfPower(entry))
            yield break;
        foreach (var unit in at.SwitchesOf(entry))
        {
            foreach (var by in unit.Model.SettingsOffered.Where(by => by != (unit.Setting.ReservesBy ?? ReservesBy.Class) && by != ReservesBy.PortLimit))
            {
                yield return new(
                    "setting", $"{unit.Id}: reserve {PowerWords.Of(by)} (reserves-by: {PowerWords.Name(by)})",
                    Delta.Switch(at, Delta.Switch(unit.Id) with { Setting = PowerSetting.Silent with { ReservesBy = by } }))
                {
                    BuysNothing = true,
                    Minutes = Entries.Setting,
                };
            }
        }
    }
}

using Headroom.Domain.Jobs;
using Headroom.Domain.Ledgers;

namespace Headroom.Engineering.Standby;

/// <summary>Entries for what a supply gives while everything starts at once.</summary>
internal static class RestartEntries
{
    /// <summary>The entry of one switch; null where nothing comes up, or its supply has no rating.</summary>
    public static LedgerEntry? Of(UnitRestart unit, Policy policy)
    {
        if (unit.Switch is not { } s || unit.Ports.Count == 0 || s.Switch.Supply?.Rated is not { } rated)
            return null;
        var reserve = policy.ReserveOf("power");
        var verdict = Judge.Of(unit.PeakSupplyWatts, rated.Value.Value, reserve);
        return new LedgerEntry
        {
            Id = $"standby/{unit.Id}/restart",
            Discipline = StandbyLedger.Discipline,
            Subject = unit.Id,
            Quantity = "restart",
            What = "supply output at restart",
            Unit = "W",
            Kind = "power",
            Demand = unit.PeakSupplyWatts,
            Limit = rated.Value.Value,
            Reserve = reserve.Of(rated.Value.Value),
            Studied = verdict,
            Question = verdict != Verdict.Unknown ? null
                : s.Supply.BaseWatts is null ? $"what does {s.Switch.Model.Id} draw by itself? read it at the socket with nothing plugged in"
                : "what a device draws while it starts is missing: see its entry",
            Story = new RestartStory(unit, s, reserve),
        };
    }
}

using Headroom.Domain.Jobs;
using Headroom.Domain.Ledgers;
using Headroom.Engineering.Binding;
using Headroom.Engineering.Power;

namespace Headroom.Engineering.Standby;

/// <summary>Tells what a supply gives at the most while devices start.</summary>
internal sealed class RestartStory(UnitRestart unit, SwitchPower s, Reserve reserve) : IEntryStory
{
    /// <inheritdoc/>
    public string Say(LedgerEntry entry) => entry.Question is { } question
        ? $"{unit.Id}: {question}."
        : $"while everything starts the supply of {unit.Id} gives {Words.Of(entry.Demand ?? 0)} W at the most of the {Words.Of(entry.Limit ?? 0)} W it is rated for.";

    /// <inheritdoc/>
    public Working Work(LedgerEntry entry)
    {
        var up = unit.Ports.Count - unit.Dark.Count;
        var steps = new List<WorkingStep>
        {
            new("ports that come up", unit.Waves > 1 ? $"in {unit.Waves} waves" : "at once", up, ""),
            new("most at the ports", $"{Words.Of(unit.Peak.Seconds)} s after the mains is back, the input of one device charging", unit.Peak.Watts, "W"),
            new("output", "the switch itself + port watts / share that reaches the ports", entry.Demand, "W"),
        };
        return new Working(
            "output = own watts + (starting draws + settled draws + one inrush) / path efficiency",
            [
                new("the switch itself", s.Supply.BaseWatts, "W", Origins.Of(s.Switch.Model.BaseWatts)),
                new("share that reaches the ports", s.Supply.PathEfficiency, "", s.Switch.Model.PathEfficiency is { } path ? Origins.Of(path) : "not in the catalogue, no loss taken"),
                new("rated output of the supply", entry.Limit, "W", Origins.Of(s.Switch.Supply?.Rated)),
                new("reserve wanted", entry.Reserve, "W", reserve.Written),
            ],
            steps, "restart of this study; inrush currents of IEEE 802.3, Tables 33-11 and 145-16, from memory");
    }

    /// <inheritdoc/>
    public IReadOnlyList<Holds> Holds(LedgerEntry entry) => entry.Limit is { } limit && entry.Demand is not null && s.Supply.BaseWatts is { } own
        ? [new("watts at the ports together", "W", unit.Peak.Watts, (limit - own) * s.Supply.PathEfficiency, (limit - reserve.Of(limit) - own) * s.Supply.PathEfficiency)]
        : [];
}

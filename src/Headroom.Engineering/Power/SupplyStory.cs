using Headroom.Domain.Jobs;
using Headroom.Domain.Ledgers;
using Headroom.Engineering.Binding;

namespace Headroom.Engineering.Power;

/// <summary>Tells what a supply gives, takes from the mains and leaves as heat.</summary>
internal sealed class SupplyStory(SwitchPower s, Reserve reserve) : IEntryStory
{
    /// <inheritdoc/>
    public string Say(LedgerEntry entry) => entry.Question is { } question
        ? $"{s.Switch.Id}: {question}."
        : $"the supply of {s.Switch.Id} gives at most {Words.Of(entry.Demand ?? 0)} W of the {Words.Of(entry.Limit ?? 0)} W it is rated for.";

    /// <inheritdoc/>
    public Working Work(LedgerEntry entry) => Work(s, s.Supply.Worst, s.Supply.WorstPortWatts);

    /// <inheritdoc/>
    public IReadOnlyList<Holds> Holds(LedgerEntry entry)
    {
        if (s.Supply.BaseWatts is not { } own || entry.Limit is not { } rated || s.Supply.WorstPortWatts is not { } now)
            return [];
        var kept = rated - reserve.Of(rated);
        return [new("watts at the ports together", "W", now, (rated - own) * s.Supply.PathEfficiency, (kept - own) * s.Supply.PathEfficiency)];
    }

    /// <summary>The working of one load of a supply.</summary>
    public static Working Work(SwitchPower s, SupplyPoint? point, double? portWatts)
    {
        var inputs = new List<WorkingInput>
        {
            new("the switch itself", s.Supply.BaseWatts, "W", Origins.Of(s.Switch.Model.BaseWatts)),
            new("watts at the ports", portWatts, "W", "sum of this study"),
            new("share of it that reaches the ports", s.Supply.PathEfficiency, "", s.Switch.Model.PathEfficiency is { } path ? Origins.Of(path) : "not in the catalogue, no loss taken"),
            new("rated output of the supply", s.Switch.Supply?.Rated?.Value.Value, "W", Origins.Of(s.Switch.Supply?.Rated)),
            new("efficiency at this load", point?.Efficiency, "", s.Switch.Supply is { } supply ? $"supply '{supply.Id}' of {s.Switch.Model.Id}" : "not known"),
        };
        var steps = new List<WorkingStep> { new("output", "the switch itself + port watts / share that reaches the ports", point?.OutputWatts ?? s.Supply.BaseWatts + portWatts / s.Supply.PathEfficiency, "W") };
        if (point is not null)
        {
            steps.Add(new("taken from the mains", $"{Words.Of(point.OutputWatts)} / {Words.Of(point.Efficiency)}", point.MainsWatts, "W"));
            steps.Add(new("left as heat", $"{Words.Of(point.MainsWatts)} − {Words.Of(portWatts ?? 0)} that leave on the cables", point.HeatWatts, "W"));
            steps.Add(new("the same", "· 3.412142", SupplyLosses.BtuPerHour(point.HeatWatts), "BTU/h"));
        }

        return new Working("input = (own watts + port watts / path efficiency) / efficiency; heat = input − port watts", inputs, steps, "conservation of energy; 1 W = 3.412142 BTU/h (unit definition)");
    }
}

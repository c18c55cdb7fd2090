using Headroom.Domain.Jobs;
using Headroom.Domain.Ledgers;
using Headroom.Engineering.Binding;
using Headroom.Engineering.Power;

namespace Headroom.Engineering.Standby;

/// <summary>Tells how long a supply holds.</summary>
internal sealed class RuntimeStory(StandbySupply supply, Reserve reserve) : IEntryStory
{
    /// <inheritdoc/>
    public string Say(LedgerEntry entry)
    {
        if (entry.Question is { } question)
            return $"{supply.Placed.Id}: {question}.";
        var load = $"{Words.Of(supply.Stages[0].Watts)} W {PowerWords.Of(supply.State)}";
        var held = RuntimeLimit.TooHeavy(supply) ? $"less than {Words.Of(entry.Limit ?? 0)} min" : $"{Words.Of(entry.Limit ?? 0)} min";
        var now = supply.Cases[0].Seconds is { } fresh ? $", {Words.Of(fresh / 60)} min with a new battery at 25 °C" : "";
        return $"{supply.Placed.Id} holds {load} for {held} with a battery at the end of its life in the cold{now}; {Words.Of(entry.Demand ?? 0)} min are wanted.";
    }

    /// <inheritdoc/>
    public Working Work(LedgerEntry entry)
    {
        var inputs = new List<WorkingInput>
        {
            new("minutes wanted", supply.Wanted?.Value.Value / 60, "min", Origins.Of(supply.Wanted)),
            new("battery, first row of its table", supply.Table?.Table.MostWatts, "W", supply.Table?.Origin ?? "not known"),
            new("efficiency on battery", supply.Table is { AtOutput: true } ? 1 : supply.Model.Efficiency?.Value.Value, "", supply.Table is { AtOutput: true } ? "within the declared minutes" : Origins.Of(supply.Model.Efficiency)),
            new("draw with nothing connected", supply.Model.NoLoad?.Value.Value, "W", Origins.Of(supply.Model.NoLoad)),
            new("coldest air at the battery", supply.Place.Coldest, "°C", supply.Place.Origin),
            new("age of the battery", supply.AgeYears, "years", Origins.Of(supply.Placed.BatteryAge)),
            new("life of the battery there", supply.LifeYears, "years", Origins.Of(supply.Battery?.Life)),
            new("reserve wanted", entry.Reserve, "min", reserve.Written),
        };
        return new Working(
            "P = (P0 + P_load / η) · K_age · K_cold; T between the rows of the table in log-log; with stages the smaller of share used and sections",
            inputs, Steps(), "constant-power table of the battery; IEEE Std 485, from memory, for the factors and the sections");
    }

    /// <inheritdoc/>
    public IReadOnlyList<Holds> Holds(LedgerEntry entry)
    {
        if (supply.Governing?.Seconds is null || supply.Wanted is not { } wanted)
            return [];
        var kept = wanted.Value.Value + reserve.Of((entry.Limit ?? 0)) * 60;
        return
        [
            new("what it feeds from the beginning", "W", supply.Stages[0].Watts, RuntimeAdvice.MostWatts(supply, wanted.Value.Value), RuntimeAdvice.MostWatts(supply, reserve.Share is { } share ? wanted.Value.Value / (1 - share) : kept)),
        ];
    }

    private List<WorkingStep> Steps()
    {
        var steps = new List<WorkingStep>();
        for (var i = 0; i < supply.Stages.Count; i++)
        {
            var stage = supply.Stages[i];
            steps.Add(new(i == 0 ? "load at the output" : $"load from {Words.Of(stage.FromSeconds / 60)} min on", i == 0 ? $"{PowerWords.Of(supply.State)}, supplies of the switches and losses of the runs included" : "ports switched off by priority", stage.Watts, "W"));
        }

        foreach (var one in supply.Cases)
        {
            if (one.Derating is not { } derating)
                continue;
            steps.Add(new($"{one.Name}: on the table", $"factor {Words.Of(derating)}", supply.TableWatts(supply.Stages[0].Watts, derating), "W"));
            if (supply.Stages.Count == 1)
                steps.Add(new($"{one.Name}: held", "from the table", one.Seconds / 60, "min"));
            else
            {
                steps.Add(new($"{one.Name}: held", "by share used", one.ByShareUsed / 60, "min"));
                steps.Add(new($"{one.Name}: held", "by sections", one.BySections / 60, "min"));
            }
        }

        return steps;
    }
}

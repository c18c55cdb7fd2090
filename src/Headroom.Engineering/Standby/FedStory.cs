using Headroom.Domain.Jobs;
using Headroom.Domain.Ledgers;
using Headroom.Engineering.Binding;

namespace Headroom.Engineering.Standby;

/// <summary>Tells what a standby supply feeds at the most.</summary>
internal sealed class FedStory(StandbySupply supply, Reserve reserve, string unit) : IEntryStory
{
    /// <inheritdoc/>
    public string Say(LedgerEntry entry) => entry.Question is { } question
        ? $"{supply.Placed.Id}: {question}."
        : $"{supply.Placed.Id} feeds {(entry.Parts is null ? "" : "at least ")}{Words.Of(entry.Demand ?? 0)} {unit} at the most and gives {Words.Of(entry.Limit ?? 0)} {unit}.";

    /// <inheritdoc/>
    public Working Work(LedgerEntry entry)
    {
        var steps = new List<WorkingStep>();
        foreach (var fed in supply.Fed)
        {
            steps.Add(unit == "VA" && fed.MostWatts is { } watts
                ? new(fed.Id, $"{Words.Of(watts)} W / {Words.Of(fed.PowerFactor)}", watts / fed.PowerFactor, "VA")
                : new(fed.Id, fed.Origin, fed.MostWatts, "W"));
        }

        return new Working(
            unit == "VA" ? "sum of watts / power factor" : "sum of what each takes from its feed at its most",
            [
                new($"{unit} it gives", entry.Limit, unit, unit == "VA" ? Origins.Of(supply.Model.Apparent) : Origins.Of(supply.Model.Real)),
                new("reserve wanted", entry.Reserve, unit, reserve.Written),
            ],
            steps,
            "balance of power; a supply has both limits, watts and volt-amperes");
    }

    /// <inheritdoc/>
    public IReadOnlyList<Holds> Holds(LedgerEntry entry)
    {
        var holds = new List<Holds>();
        if (entry.Limit is not { } limit || entry.Demand is not { } demand || entry.Parts is not null)
            return holds;
        foreach (var s in supply.Units.Switches)
        {
            if (s.Supply is not { WorstPortWatts: { } ports, Worst: { } worst, BaseWatts: { } own } || s.Counter.Served.Count == 0)
                continue;
            var factor = unit == "VA" ? s.Switch.Supply?.PowerFactor?.Value.Value ?? FedUnit.UsualPowerFactor : 1;
            // The efficiency of the supply at its most is kept: near there its curve is flat.
            double? Cap(double kept) => worst.MainsWatts + (kept - demand) * factor is > 0 and var feed ? ConverterLoad.PortCapWatts(feed, own, worst.Efficiency, s.Supply.PathEfficiency) : null;
            holds.Add(new($"watts at the ports of {s.Switch.Id}", "W", ports, Cap(limit), Cap(limit - reserve.Of(limit))));
        }

        return holds;
    }
}

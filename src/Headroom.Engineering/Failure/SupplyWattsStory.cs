using Headroom.Domain.Jobs;
using Headroom.Domain.Ledgers;
using Headroom.Engineering.Binding;

namespace Headroom.Engineering.Failure;

/// <summary>Tells whether what is left with one supply lost is enough for the ports.</summary>
internal sealed class SupplyWattsStory(SupplyLoss unit, Reserve reserve) : PlainStory(reserve)
{
    /// <inheritdoc/>
    public override Working Work(LedgerEntry entry) => new(
        "what it sets aside for its ports at the most while all runs, against what is left when one supply has failed",
        [
            new("left for the ports with one supply lost", entry.Limit, "W", Origins.Of(unit.Supply?.OneLost)),
            new("with all of them", unit.Supply?.PortWatts?.Value.Value, "W", Origins.Of(unit.Supply?.PortWatts)),
            ReserveInput(entry),
        ],
        [new("set aside at the most, all running", "this study, power", entry.Demand, "W")],
        "where less is left, ports are switched off by their priority; a supply that fails starts nothing anew, so that the start is not in it");

    /// <inheritdoc/>
    public override IReadOnlyList<Holds> Holds(LedgerEntry entry) => entry is { Limit: { } limit, Demand: { } demand }
        ? [new("watts of its ports, all running", "W", demand, limit, Kept(limit))]
        : [];

    /// <inheritdoc/>
    protected override string Sentence(LedgerEntry entry) =>
        $"With one supply lost {unit.Id} has {Words.Of(entry.Limit ?? 0)} W for its ports, which take {Words.Of(entry.Demand ?? 0)} W at the most.";
}

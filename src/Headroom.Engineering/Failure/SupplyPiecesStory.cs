using Headroom.Domain.Jobs;
using Headroom.Domain.Ledgers;

namespace Headroom.Engineering.Failure;

/// <summary>Tells how many supplies a switch or midspan may lose.</summary>
internal sealed class SupplyPiecesStory(SupplyLoss unit, Reserve reserve) : PlainStory(reserve)
{
    /// <inheritdoc/>
    public override Working Work(LedgerEntry entry) => new(
        "supplies it is made of − 1, against one that fails",
        [new("supplies in it", unit.Supply?.Pieces, "", $"catalogue, {unit.Model}{(unit.Supply is { Id.Length: > 0 } supply ? $", supply {supply.Id}" : "")}; one where nothing is written"), ReserveInput(entry)],
        [new("may be lost", "supplies in it − 1", entry.Limit, "supplies")],
        "asked for by the policy, failures: a supply may fail; all its supplies are taken to hang on one feed, so that an outage of the mains is another matter");

    /// <inheritdoc/>
    public override IReadOnlyList<Holds> Holds(LedgerEntry entry) => [];

    /// <inheritdoc/>
    protected override string Sentence(LedgerEntry entry) => entry.Limit is > 0
        ? $"{unit.Id} has {unit.Supply!.Pieces} supplies and goes on when one of them fails."
        : $"{unit.Id} has one supply and stops when it fails; one must be able to fail.";
}

using Headroom.Domain.Ledgers;

namespace Headroom.Engineering.Power;

/// <summary>Tells that an input is missing.</summary>
internal sealed class NotKnownStory : IEntryStory
{
    /// <inheritdoc/>
    public string Say(LedgerEntry entry) => $"{entry.Subject}: {entry.Question}.";

    /// <inheritdoc/>
    public Working Work(LedgerEntry entry) => new(
        "not worked out: an input is missing", [new(entry.What, null, entry.Unit, "not in the catalogue")], [new("to be found out", entry.Question ?? "", null, "")], "catalogue");

    /// <inheritdoc/>
    public IReadOnlyList<Holds> Holds(LedgerEntry entry) => [];
}

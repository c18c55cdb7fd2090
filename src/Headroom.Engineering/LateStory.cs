using Headroom.Domain.Findings;
using Headroom.Domain.Jobs;
using Headroom.Domain.Ledgers;

namespace Headroom.Engineering;

/// <summary>A story told from what an entry was made of; nothing of it is put into words before somebody asks.</summary>
/// <param name="say">The sentence when nothing is missing.</param>
/// <param name="work">The working.</param>
/// <param name="holds">Up to where it holds; null when there is nothing to turn.</param>
internal sealed class LateStory(Func<LedgerEntry, string> say, Func<LedgerEntry, Working> work, Func<LedgerEntry, IReadOnlyList<Holds>>? holds = null) : IEntryStory
{
    /// <inheritdoc/>
    public string Say(LedgerEntry entry) => entry.Question is { } question && entry.Studied == Verdict.Unknown ? $"{entry.Subject}: {question}." : say(entry);

    /// <inheritdoc/>
    public Working Work(LedgerEntry entry) => work(entry);

    /// <inheritdoc/>
    public IReadOnlyList<Holds> Holds(LedgerEntry entry) => entry.Demand is null || entry.Limit is null || entry.Parts is not null ? [] : holds?.Invoke(entry) ?? [];

    /// <summary>The reserve as an input of a working.</summary>
    public static WorkingInput ReserveInput(LedgerEntry entry, Reserve reserve) => new(
        "reserve wanted", entry.Reserve, entry.Unit, reserve.At == Place.None ? $"house rule by default, {reserve.Written}" : $"{reserve.Written}, {reserve.At}");
}

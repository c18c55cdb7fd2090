using Headroom.Domain.Findings;
using Headroom.Domain.Jobs;
using Headroom.Domain.Ledgers;

namespace Headroom.Engineering;

/// <summary>What many stories share: a question is told as it stands, and the reserve says where it comes from.</summary>
internal abstract class PlainStory(Reserve reserve) : IEntryStory
{
    /// <summary>The reserve wanted.</summary>
    protected Reserve Reserve => reserve;

    /// <inheritdoc/>
    public string Say(LedgerEntry entry) => entry.Question is { } question ? $"{entry.Subject}: {question}." : Sentence(entry);

    /// <inheritdoc/>
    public abstract Working Work(LedgerEntry entry);

    /// <inheritdoc/>
    public virtual IReadOnlyList<Holds> Holds(LedgerEntry entry) => [];

    /// <summary>What is asked and what there is, in one or two sentences; nothing is missing.</summary>
    protected abstract string Sentence(LedgerEntry entry);

    /// <summary>The reserve as an input of a working.</summary>
    protected WorkingInput ReserveInput(LedgerEntry entry) => new(
        "reserve wanted", entry.Reserve, entry.Unit, reserve.At == Place.None ? $"house rule by default, {reserve.Written}" : $"{reserve.Written}, {reserve.At}");

    /// <summary>The most that may be asked of a limit when the reserve is to be kept.</summary>
    protected double Kept(double limit) => limit - reserve.Of(limit);

    /// <summary>The least limit at which a demand keeps the reserve; null when there is none.</summary>
    protected double? LimitKeeping(double demand) =>
        reserve.Amount is { } amount ? demand + amount : reserve.Share is { } share and < 1 ? demand / (1 - share) : null;
}

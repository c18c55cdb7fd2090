using Headroom.Domain.Jobs;
using Headroom.Domain.Ledgers;
using Headroom.Domain.Quantities;
using Headroom.Engineering.Binding;

namespace Headroom.Engineering.Standby;

/// <summary>Tells how long it takes until something works again.</summary>
internal sealed class BackStory(KeptService service, Given<Seconds> wish, Reserve reserve) : IEntryStory
{
    /// <inheritdoc/>
    public string Say(LedgerEntry entry) => entry.Question is { } question
        ? $"{service.Name}: {question}."
        : $"{service.Name} works again {Words.Of(entry.Demand ?? 0)} min after the mains is back, {Slowest()?.What ?? service.Name} last; {Words.Of(entry.Limit ?? 0)} min are allowed.";

    /// <inheritdoc/>
    public Working Work(LedgerEntry entry)
    {
        var steps = new List<WorkingStep>(service.Parts.Count);
        foreach (var part in service.Parts)
            steps.Add(new(part.What, part.What == service.LastId ? "the last of them, from mains to use" : "from mains to use", part.Seconds / 60, "min"));
        return new Working(
            "the latest of: the last device, the switches on its way, the line",
            [new("allowed", entry.Limit, "min", Origins.Of(wish)), new("reserve wanted", entry.Reserve, "min", reserve.Written)],
            steps, "restart of this study; detection and classification at the longest times of IEEE 802.3, from memory");
    }

    /// <inheritdoc/>
    public IReadOnlyList<Holds> Holds(LedgerEntry entry) => entry.Limit is { } limit && Slowest() is { } slowest && entry.Question is null
        ? [new($"when {slowest.What} is there", "min", slowest.Seconds / 60, limit, limit - reserve.Of(limit))]
        : [];

    private BackPart? Slowest()
    {
        BackPart? slowest = null;
        foreach (var part in service.Parts)
            slowest = slowest is null || part.Seconds > slowest.Seconds ? part : slowest;
        return slowest;
    }
}

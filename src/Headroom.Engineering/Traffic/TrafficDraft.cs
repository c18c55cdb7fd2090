using Headroom.Domain.Jobs;
using Headroom.Domain.Ledgers;

namespace Headroom.Engineering.Traffic;

/// <summary>What an entry is about, before its numbers.</summary>
/// <param name="Subject">The thing.</param>
/// <param name="Quantity">The last part of its id.</param>
/// <param name="What">What it is a limit of, in words.</param>
/// <param name="Unit">The unit of its numbers.</param>
/// <param name="Kind">The kind of limit.</param>
internal sealed record TrafficDraft(string Subject, string Quantity, string What, string Unit, string Kind)
{
    /// <summary>Which way the limit works.</summary>
    public Sense Sense { get; init; }

    /// <summary>The entry with its numbers, judged.</summary>
    public LedgerEntry With(double? demand, double? limit, Reserve reserve, IEntryStory story, KnownParts? parts = null) => new()
    {
        Discipline = TrafficLedger.Discipline,
        Subject = Subject,
        Quantity = Quantity,
        What = What,
        Unit = Unit,
        Kind = Kind,
        Sense = Sense,
        Demand = demand,
        Limit = limit,
        Reserve = limit is { } there ? reserve.Of(there) : null,
        Studied = Judge.Of(demand, limit, reserve, parts),
        Parts = parts,
        Story = story,
    };
}

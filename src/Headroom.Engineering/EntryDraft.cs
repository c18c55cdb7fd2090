using Headroom.Domain.Jobs;
using Headroom.Domain.Ledgers;

namespace Headroom.Engineering;

/// <summary>What an entry is about, before its numbers.</summary>
/// <param name="Discipline">The discipline.</param>
/// <param name="Subject">The thing.</param>
/// <param name="Quantity">The last part of its id.</param>
/// <param name="What">What it is a limit of, in words; at most 24 characters.</param>
/// <param name="Unit">The unit of its numbers.</param>
/// <param name="Kind">The kind of limit.</param>
internal readonly record struct EntryDraft(string Discipline, string Subject, string Quantity, string What, string Unit, string Kind)
{
    /// <summary>Which way the limit works.</summary>
    public Sense Sense { get; init; }

    /// <summary>True when it is for the firm's own eyes.</summary>
    public bool Inside { get; init; }

    /// <summary>Half the interval of what is left; null when no input has one.</summary>
    public double? PlusMinus { get; init; }

    /// <summary>Codes of the cautions that apply; null for none.</summary>
    public IReadOnlyList<Caution>? Cautions { get; init; }

    /// <summary>What was assumed, in words; null for nothing.</summary>
    public IReadOnlyList<string>? Assumed { get; init; }

    /// <summary>The entry with its numbers, judged.</summary>
    public LedgerEntry With(double? demand, double? limit, Reserve reserve, IEntryStory story, KnownParts? parts = null) => new()
    {
        Discipline = Discipline,
        Subject = Subject,
        Quantity = Quantity,
        What = What,
        Unit = Unit,
        Kind = Kind,
        Sense = Sense,
        Inside = Inside,
        Demand = demand,
        Limit = limit,
        Reserve = limit is { } there ? reserve.Of(there) : null,
        Studied = Judge.Of(demand, limit, reserve, parts),
        PlusMinus = PlusMinus,
        Parts = parts,
        Assumed = Assumed ?? [],
        Cautions = Cautions ?? [],
        Story = story,
    };
}

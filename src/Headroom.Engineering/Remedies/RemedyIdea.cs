using Headroom.Domain.Jobs;
using Headroom.Domain.Ledgers;
using Headroom.Domain.Quantities;

namespace Headroom.Engineering.Remedies;

/// <summary>Something that could help, before anybody has worked out whether it does.</summary>
/// <param name="Kind">The kind of remedy, in a word or two.</param>
/// <param name="Text">What is done, in words.</param>
/// <param name="Change">The design it makes, saying only what differs.</param>
internal sealed record RemedyIdea(string Kind, string Text, Design Change)
{
    /// <summary>True when nothing is bought for it.</summary>
    public bool BuysNothing { get; init; }

    /// <summary>Minutes of work that no task of an offer covers, from and to; common practice, no source.</summary>
    public (int Low, int High) Minutes { get; init; }

    /// <summary>What is bought that no offer lists; empty for nothing.</summary>
    public IReadOnlyList<Given<Domain.Quantities.Money>?> Goods { get; init; } = [];

    /// <summary>What of the price nobody knows, in words; null when all is known.</summary>
    public string? Unpriced { get; init; }

    /// <summary>Where the work can hurt somebody, void a warranty or needs somebody licensed.</summary>
    public IReadOnlyList<Caution> Cautions { get; init; } = [];

    /// <summary>What only a look on site can tell; null when nothing.</summary>
    public string? Rough { get; init; }
}

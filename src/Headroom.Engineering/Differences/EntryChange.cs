using Headroom.Domain.Ledgers;

namespace Headroom.Engineering.Differences;

/// <summary>One entry in two ledgers.</summary>
/// <param name="Before">The entry in the first.</param>
/// <param name="After">The entry in the second.</param>
public sealed record EntryChange(LedgerEntry Before, LedgerEntry After)
{
    /// <summary>By how much more is left in the second, in the entry's unit; null when it is not known in both, or the units differ.</summary>
    public double? Moved => Before.Unit == After.Unit ? After.Left - Before.Left : null;

    /// <summary>That as a share of the larger limit [1]; null likewise.</summary>
    public double? Share => Moved is { } moved && Before.Limit is { } first && After.Limit is { } second
        ? moved / Math.Max(1e-9, Math.Max(Math.Abs(first), Math.Abs(second)))
        : null;
}

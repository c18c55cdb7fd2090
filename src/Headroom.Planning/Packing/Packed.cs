namespace Headroom.Planning.Packing;

/// <summary>What came of packing.</summary>
/// <param name="Cost">What the best packing costs, in the smallest coin; null when none was found.</param>
/// <param name="Bound">No packing costs less; null when it was proved that there is none.</param>
/// <param name="Boxes">The boxes; empty when none was found.</param>
public sealed record Packed(long? Cost, long? Bound, IReadOnlyList<PackedBox> Boxes)
{
    /// <summary>True when nothing cheaper is possible, or nothing at all.</summary>
    public bool Proved => Cost == Bound;

    /// <summary>True when it is proved that nothing fits.</summary>
    public bool Impossible => Cost is null && Bound is null;

    /// <summary>How far the cost may lie above the least possible, as a share of the cost; null without a packing.</summary>
    public double? Gap => Cost is { } cost && Bound is { } bound ? cost == 0 ? 0 : Math.Max(0, (cost - bound) / (double)cost) : null;

    /// <summary>That nothing fits.</summary>
    internal static Packed Nothing { get; } = new(null, null, []);
}

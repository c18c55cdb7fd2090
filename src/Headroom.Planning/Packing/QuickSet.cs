namespace Headroom.Planning.Packing;

/// <summary>Boxes of one place as they were filled at once, with the extra beside them.</summary>
/// <param name="Cost">What all of it costs.</param>
/// <param name="Boxes">The boxes.</param>
/// <param name="Extra">The number of the extra; null where the place needs none.</param>
internal sealed record QuickSet(long Cost, IReadOnlyList<PackedBox> Boxes, int? Extra);

namespace Headroom.Engineering.Power;

/// <summary>Which pins of an eight-pin plug carry power.</summary>
/// <param name="One">Pins of one polarity.</param>
/// <param name="Other">Pins of the other.</param>
/// <param name="OneIsPositive">Whether the first group is the positive one; null where either polarity is allowed.</param>
public sealed record PowerPins(IReadOnlyList<int> One, IReadOnlyList<int> Other, bool? OneIsPositive);

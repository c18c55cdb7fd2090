namespace Headroom.Engineering.Heat;

/// <summary>One way to reckon how long a part lasts.</summary>
/// <param name="How">The way in words.</param>
/// <param name="Hours">What it comes to [h].</param>
internal sealed record LifeWay(string How, double Hours);

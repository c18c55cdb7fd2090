namespace Headroom.Engineering.Reliability;

/// <summary>One failure rate over another, with its interval.</summary>
/// <param name="Ratio">The ratio [1]; null when the second has no failure.</param>
/// <param name="Least">The low end [1].</param>
/// <param name="Most">The high end [1]; null when nothing bounds it.</param>
public sealed record RateRatio(double? Ratio, double Least, double? Most);

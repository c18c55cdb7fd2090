namespace Headroom.Engineering.Reliability;

/// <summary>A time between failures with the range it may lie in.</summary>
/// <param name="Hours">The best single figure [h]; null when there is none, as after no failure at all.</param>
/// <param name="LeastHours">The low end [h].</param>
/// <param name="MostHours">The high end [h]; null when nothing bounds it.</param>
public sealed record RateRange(double? Hours, double LeastHours, double? MostHours);

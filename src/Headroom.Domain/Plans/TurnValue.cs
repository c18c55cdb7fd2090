namespace Headroom.Domain.Plans;

/// <summary>The cheapest design at one value.</summary>
/// <param name="Value">The value.</param>
/// <param name="Bought">What is bought, in words; null when no design is possible.</param>
/// <param name="Total">What it costs in all; null when no design is possible.</param>
public sealed record TurnValue(double Value, string? Bought, decimal? Total);

namespace Headroom.Domain.Plans;

/// <summary>A requirement that, together with the others named, no design can keep.</summary>
/// <param name="Requirement">The requirement, in words.</param>
/// <param name="Relaxed">What it takes to give it up, and what the cheapest design would then cost, in words.</param>
/// <param name="Total">What the cheapest design costs without it; null when there is still none.</param>
public sealed record PlanClash(string Requirement, string Relaxed, decimal? Total);

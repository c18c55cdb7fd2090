using Headroom.Domain.Quantities;

namespace Headroom.Domain.Jobs;

/// <summary>What the job took in the end.</summary>
/// <param name="Hours">Hours worked; null when not written.</param>
/// <param name="Material">What the goods cost in the end; null when not written.</param>
/// <param name="Visits">Times somebody went there; null when not written.</param>
/// <param name="Visit">What one visit costs besides its hours; null when not written.</param>
/// <param name="Variations">What was ordered on the way, with its price and cost.</param>
public sealed record Afterwards(Given<Seconds>? Hours, Given<Money>? Material, int? Visits, Given<Money>? Visit, IReadOnlyList<ExtraLine> Variations);

using Headroom.Domain.Jobs;

namespace Headroom.Domain.Ledgers;

/// <summary>A reading with which nothing could be compared.</summary>
/// <param name="Reading">The reading.</param>
/// <param name="Why">Why not, in words.</param>
public sealed record LooseReading(Reading Reading, string Why);

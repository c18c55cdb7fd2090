using Headroom.Domain.Findings;
using Headroom.Domain.Quantities;

namespace Headroom.Domain.Jobs;

/// <summary>A line of the offer that does not follow from the design.</summary>
/// <param name="What">What it is, as the client reads it.</param>
/// <param name="Count">How many; 1 or more.</param>
/// <param name="Cost">What one costs the firm; null when not known.</param>
/// <param name="Price">What one is charged; null when it follows from the margin.</param>
/// <param name="Tax">The group of its tax; null for the usual one.</param>
/// <param name="Option">The option it belongs to; null when it belongs to the offer itself.</param>
/// <param name="At">Where it stands in the file.</param>
public sealed record ExtraLine(string What, int Count, Given<Money>? Cost, Given<Money>? Price, string? Tax, string? Option, Place At);

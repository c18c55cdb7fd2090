using Headroom.Domain.Quantities;

namespace Headroom.Domain.Jobs;

/// <summary>What is to be known about the cost of owning the installation.</summary>
/// <param name="Years">Over how many years; 1 or more.</param>
/// <param name="Interest">What money costs in a year; null counts as none, and is said.</param>
/// <param name="Energy">What a kilowatt-hour costs; null when not known.</param>
/// <param name="BatteryVisit">What changing the batteries of one standby supply costs besides the blocks; null when not known.</param>
public sealed record OwningTerms(int Years, Given<Share>? Interest, Given<Money>? Energy, Given<Money>? BatteryVisit);

namespace Headroom.Domain.Plans;

/// <summary>A design that is not offered, and what makes it lose.</summary>
/// <param name="Why">Which kind it is: cheaper, dearer, single box, of the job, or not considered.</param>
/// <param name="Bought">What would be bought, in words.</param>
/// <param name="Total">What it would cost in all; null when not known.</param>
/// <param name="Entry">The id of the ledger entry that makes it lose; null when its cost does, or its ports.</param>
/// <param name="Because">What makes it lose, in words.</param>
public sealed record RefusedSet(string Why, string Bought, decimal? Total, string? Entry, string Because);

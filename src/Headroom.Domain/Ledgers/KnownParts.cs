namespace Headroom.Domain.Ledgers;

/// <summary>How many parts of a sum are known; the demand is then "at least".</summary>
/// <param name="Known">How many are known.</param>
/// <param name="All">How many there are.</param>
public sealed record KnownParts(int Known, int All);

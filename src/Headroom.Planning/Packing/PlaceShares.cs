namespace Headroom.Planning.Packing;

/// <summary>Who goes where, and how many boxes stand there.</summary>
/// <param name="Goes">How many of a kind go to a place.</param>
/// <param name="Bought">How many of each box stand in each place.</param>
/// <param name="Cost">What the boxes cost.</param>
internal sealed record PlaceShares(IReadOnlyDictionary<(int Kind, int Place), int> Goes, int[,] Bought, long Cost);

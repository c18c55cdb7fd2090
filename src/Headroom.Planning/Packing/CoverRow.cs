namespace Headroom.Planning.Packing;

/// <summary>That what is bought must cover what is asked of one limit, by the kinds that only some boxes can serve.</summary>
/// <param name="OfBox">What each box has of it; 0 for those that serve none of the kinds.</param>
/// <param name="Asked">What is asked at the least.</param>
internal sealed record CoverRow(long[] OfBox, long Asked);

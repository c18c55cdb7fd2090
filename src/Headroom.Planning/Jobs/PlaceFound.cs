namespace Headroom.Planning.Jobs;

/// <summary>What was found for a place by itself, for all that come to the same.</summary>
/// <param name="Place">The place it was found for.</param>
/// <param name="Search">The search, which can go on.</param>
internal sealed record PlaceFound(int Place, Search Search)
{
    /// <summary>What was found, the cheapest first, the modules of all its links counted.</summary>
    public IReadOnlyList<Candidate> ByCost => [.. Search.Found.OrderBy(found => found.Packed.Cost).ThenBy(found => found.Bought, StringComparer.Ordinal)];
}

namespace Headroom.Planning.Packing;

/// <summary>The least number of equal boxes that can hold some loads.</summary>
public static class BoxBounds
{
    /// <summary>The best of three bounds: by the sum of the loads, by ports, and by the loads too large to share a box.</summary>
    /// <param name="loads">Loads with how many there are of each.</param>
    /// <param name="limit">What a box holds.</param>
    /// <param name="ports">How many a box takes.</param>
    /// <returns>No packing has fewer boxes.</returns>
    public static long Least(IReadOnlyList<(long Load, int Count)> loads, long limit, int ports)
    {
        var sum = loads.Sum(item => item.Load * item.Count);
        var count = loads.Sum(item => (long)item.Count);
        var least = Math.Max(Up(sum, limit), Up(count, ports));
        foreach (var alpha in loads.Select(item => item.Load).Where(load => 2 * load <= limit).Append(0))
            least = Math.Max(least, ByLarge(loads, limit, alpha));
        return least;
    }

    /// <summary>The bound by large loads: each above half a box needs one, and the middle ones fill what is left beside them.</summary>
    /// <param name="loads">Loads with how many there are of each.</param>
    /// <param name="limit">What a box holds.</param>
    /// <param name="alpha">Loads below this are left out; 0 to half the limit.</param>
    /// <returns>No packing has fewer boxes.</returns>
    /// <remarks>Source: Martello and Toth, Knapsack Problems, 1990, chapter 8, bound L2; chapter number from memory.</remarks>
    public static long ByLarge(IReadOnlyList<(long Load, int Count)> loads, long limit, long alpha)
    {
        var alone = loads.Where(item => item.Load > limit - alpha).Sum(item => (long)item.Count);
        var large = loads.Where(item => 2 * item.Load > limit && item.Load <= limit - alpha).ToList();
        var middle = loads.Where(item => item.Load >= alpha && 2 * item.Load <= limit).Sum(item => item.Load * item.Count);
        var boxes = large.Sum(item => (long)item.Count);
        var beside = boxes * limit - large.Sum(item => item.Load * item.Count);
        return alone + boxes + Math.Max(0, Up(middle - beside, limit));
    }

    private static long Up(long part, long whole) => part <= 0 ? 0 : (part + whole - 1) / whole;
}

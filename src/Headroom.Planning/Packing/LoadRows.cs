namespace Headroom.Planning.Packing;

/// <summary>Limits as rows of the smallest whole numbers that say the same, without those that another implies.</summary>
internal static class LoadRows
{
    /// <summary>The rows: what each way takes, and what there is.</summary>
    /// <param name="loads">What each way takes of each limit.</param>
    /// <param name="limits">The limits.</param>
    public static List<(long[] Loads, long Limit)> Of(IReadOnlyList<IReadOnlyList<long>> loads, IReadOnlyList<long> limits)
    {
        var rows = new List<(long[] Loads, long Limit)>();
        for (var row = 0; row < limits.Count; row++)
        {
            var of = loads.Select(way => way[row]).ToArray();
            if (Array.Exists(of, load => load != 0))
                rows.Add(Smallest(of, limits[row]));
        }

        return [.. rows.Where((row, i) => !rows.Where((other, j) => i != j && Implies(other, row, j < i)).Any())];
    }

    private static (long[] Loads, long Limit) Smallest(long[] loads, long limit)
    {
        var divisor = loads.Aggregate(0L, Divisor);
        return ([.. loads.Select(load => load / divisor)], (long)Math.Floor(limit / (double)divisor));
    }

    // Of two that are the same the first stays.
    private static bool Implies((long[] Loads, long Limit) one, (long[] Loads, long Limit) other, bool isFirst)
    {
        var same = one.Limit == other.Limit;
        for (var i = 0; i < one.Loads.Length; i++)
        {
            if ((Int128)one.Loads[i] * other.Limit < (Int128)other.Loads[i] * one.Limit)
                return false;
            same &= one.Loads[i] == other.Loads[i];
        }

        return !same || isFirst;
    }

    private static long Divisor(long one, long other)
    {
        while (other != 0)
            (one, other) = (other, one % other);
        return Math.Abs(one);
    }
}

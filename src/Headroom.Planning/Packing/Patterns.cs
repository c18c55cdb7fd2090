namespace Headroom.Planning.Packing;

/// <summary>All ways of filling one box so that nothing more goes in.</summary>
internal static class Patterns
{
    // Beyond this the model of patterns is no longer the quicker one.
    private const int Most = 60_000;

    /// <summary>The patterns, each with the count of every item; null when there are too many.</summary>
    public static List<int[]>? Of(IReadOnlyList<(int Way, long Load, int Count)> items, long limit, int ports)
    {
        var found = new List<int[]>();
        return Fill(items, new int[items.Count], (0, limit, ports), found) ? found : null;
    }

    private static bool Fill(IReadOnlyList<(int Way, long Load, int Count)> items, int[] counts, (int At, long Room, int Free) rest, List<int[]> found)
    {
        if (rest.At == items.Count)
        {
            if (IsFull(items, counts, rest.Room, rest.Free))
                found.Add([.. counts]);
            return found.Count <= Most;
        }

        var (_, load, count) = items[rest.At];
        var most = (int)Math.Min(Math.Min(count, rest.Free), load == 0 ? int.MaxValue : rest.Room / load);
        for (var number = most; number >= 0; number--)
        {
            counts[rest.At] = number;
            if (!Fill(items, counts, (rest.At + 1, rest.Room - number * load, rest.Free - number), found))
                return false;
        }

        counts[rest.At] = 0;
        return true;
    }

    private static bool IsFull(IReadOnlyList<(int Way, long Load, int Count)> items, int[] counts, long room, int free)
    {
        if (free == 0)
            return true;
        for (var i = 0; i < items.Count; i++)
        {
            if (counts[i] < items[i].Count && items[i].Load <= room)
                return false;
        }

        return true;
    }
}

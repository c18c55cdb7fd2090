namespace Headroom.Engineering;

/// <summary>Gives the parts of a large site to all processors; what is worked out, and its order, is the same as by one after the other.</summary>
internal static class Shares
{
    /// <summary>From how many things on work is shared out: below that a study takes a few milliseconds, and sharing would cost more than it saves.</summary>
    public const int Worth = 4_096;

    // A fixed number, some for each processor of an ordinary machine, so that none waits long for another that is disturbed.
    private const int Most = 8;

    /// <summary>Makes one thing of each of a list, in its order.</summary>
    public static TTo[] Map<TFrom, TTo>(IReadOnlyList<TFrom> from, Func<TFrom, TTo> make) => Map(from, from.Count, make);

    /// <summary>The same where each of the list stands for several things, such as a switch for its ports.</summary>
    public static TTo[] Map<TFrom, TTo>(IReadOnlyList<TFrom> from, int things, Func<TFrom, TTo> make)
    {
        var made = new TTo[from.Count];
        Each(from.Count, Count(things), (_, first, end) =>
        {
            for (var i = first; i < end; i++)
                made[i] = make(from[i]);
        });
        return made;
    }

    /// <summary>Adds what comes of each of a list to another, in its order.</summary>
    public static void Gather<TFrom, TTo>(List<TTo> to, IReadOnlyList<TFrom> from, Action<List<TTo>, TFrom> add) => Gather(to, from, from.Count, add);

    /// <summary>The same where each of the list stands for several things.</summary>
    public static void Gather<TFrom, TTo>(List<TTo> to, IReadOnlyList<TFrom> from, int things, Action<List<TTo>, TFrom> add)
    {
        if (things < Worth || from.Count < Most)
        {
            for (var i = 0; i < from.Count; i++)
                add(to, from[i]);
            return;
        }

        var parts = new List<TTo>[Most];
        Each(from.Count, Most, (share, first, end) =>
        {
            var own = parts[share] = new List<TTo>((end - first) * 4);
            for (var i = first; i < end; i++)
                add(own, from[i]);
        });
        foreach (var part in parts)
            to.AddRange(part);
    }

    /// <summary>Sorts keys, each with its place beside it.</summary>
    public static void Sort(ulong[] keys, int[] places, int count)
    {
        if (count < Worth)
        {
            Array.Sort(keys, places, 0, count);
            return;
        }

        var middle = count / 2;
        Parallel.Invoke(() => Array.Sort(keys, places, 0, middle), () => Array.Sort(keys, places, middle, count - middle));
        var (lower, their) = (keys.AsSpan(0, middle).ToArray(), places.AsSpan(0, middle).ToArray());
        var (left, right, at) = (0, middle, 0);
        while (left < lower.Length)
        {
            if (right < count && keys[right] < lower[left])
                (keys[at], places[at++]) = (keys[right], places[right++]);
            else
                (keys[at], places[at++]) = (lower[left], their[left++]);
        }
    }

    /// <summary>Works on a number of things by shares: called with the number of the share, its first and the one behind its last.</summary>
    public static void Each(int count, Action<int, int, int> work) => Each(count, Count(count), work);

    /// <summary>Makes two things that need nothing of each other, side by side where there are many things in them.</summary>
    public static (TOne One, TOther Other) Both<TOne, TOther>(int things, Func<TOne> one, Func<TOther> other)
    {
        if (things < Worth)
            return (one(), other());
        var beside = Task.Run(other);
        return (one(), beside.GetAwaiter().GetResult());
    }

    private static void Each(int count, int shares, Action<int, int, int> work)
    {
        if (shares == 1)
            work(0, 0, count);
        else
            Parallel.For(0, shares, share => work(share, (int)((long)count * share / shares), (int)((long)count * (share + 1) / shares)));
    }

    private static int Count(int things) => things < Worth ? 1 : Most;
}

using System.Buffers;
using Headroom.Domain.Ledgers;

namespace Headroom.Engineering;

/// <summary>The order of a ledger: short first, then tight, unknown, clear; within a verdict the least left as a share of the limit; then by name.</summary>
internal static class WorstFirst
{
    /// <summary>The entries in that order.</summary>
    public static List<LedgerEntry> Sorted(List<LedgerEntry> entries)
    {
        // Numbers are sorted and not entries, each worked out once, in borrowed memory.
        var count = entries.Count;
        var keys = ArrayPool<ulong>.Shared.Rent(count);
        var places = ArrayPool<int>.Shared.Rent(count);
        Shares.Each(count, (_, first, end) =>
        {
            for (var i = first; i < end; i++)
                (keys[i], places[i]) = (KeyOf(entries[i]), i);
        });
        Shares.Sort(keys, places, count);
        var sorted = new LedgerEntry[count];
        Shares.Each(count, (_, first, end) => Place(entries, sorted, (keys, places), (first, end)));
        ArrayPool<ulong>.Shared.Return(keys);
        ArrayPool<int>.Shared.Return(places);
        entries.Clear();
        entries.AddRange(sorted);
        return entries;
    }

    // Those with one key go by what that leaves out, and by name. One who starts in this share is placed here to its end, one who started before is not.
    private static void Place(List<LedgerEntry> entries, LedgerEntry[] sorted, (ulong[] Keys, int[] Places) by, (int First, int End) share)
    {
        var i = share.First;
        while (i > 0 && i < share.End && by.Keys[i] == by.Keys[i - 1])
            i++;
        while (i < share.End)
        {
            var end = i + 1;
            while (end < sorted.Length && by.Keys[end] == by.Keys[i])
                end++;
            Array.Sort(by.Places, i, end - i);
            var inOrder = true;
            for (var at = i; at < end; at++)
            {
                sorted[at] = entries[by.Places[at]];
                inOrder &= at == i || Within.One.Compare(sorted[at - 1], sorted[at]) <= 0;
            }

            if (!inOrder)
                Array.Sort(sorted, i, end - i, Within.One);
            i = end;
        }
    }

    // The bits of a number sort as it does once the negative ones are turned over; the verdict stands before them, and takes the room of the last two.
    private static ulong KeyOf(LedgerEntry entry)
    {
        var bits = BitConverter.DoubleToUInt64Bits(ShareLeft(entry));
        var inOrder = (bits >> 63) == 0 ? bits | 1UL << 63 : ~bits;
        return Rank(entry.Verdict) << 62 | inOrder >> 2;
    }

    private static ulong Rank(Verdict verdict) => verdict switch
    {
        Verdict.Short => 0,
        Verdict.Tight => 1,
        Verdict.Unknown => 2,
        _ => 3,
    };

    // Where nothing is asked nothing can run out, however little there is. A zero has no sign here.
    private static double ShareLeft(LedgerEntry entry) => entry.Left is { } left && entry.Limit is { } limit
        ? entry.Demand is 0 && left >= 0 ? double.PositiveInfinity : 0.0 + left / Math.Max(1e-9, Math.Abs(limit))
        : double.NegativeInfinity;

    private sealed class Within : IComparer<LedgerEntry>
    {
        public static readonly Within One = new();

        public int Compare(LedgerEntry? x, LedgerEntry? y)
        {
            var (first, second) = (x!, y!);
            var by = ShareLeft(first).CompareTo(ShareLeft(second));
            by = by != 0 ? by : string.CompareOrdinal(first.Discipline, second.Discipline);
            by = by != 0 ? by : string.CompareOrdinal(first.Subject, second.Subject);
            return by != 0 ? by : string.CompareOrdinal(first.Quantity, second.Quantity);
        }
    }
}

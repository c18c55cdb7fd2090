using System.Buffers;
using Headroom.Domain.Ledgers;

namespace Headroom.Engineering;

/// <summary>The order of a ledger: short first, then tight, unknown, clear; within a verdict the least left as a share of the limit; then by name.</summary>
internal static class WorstFirst
{
    /// <summary>The entries in that order.</summary>
    public static List<LedgerEntry> Sorted(List<LedgerEntry> entries)
    {
        // Worked out once for each entry, not at each comparison, and in borrowed memory.
        var keys = ArrayPool<Key>.Shared.Rent(entries.Count);
        Shares.Each(entries.Count, (_, first, end) =>
        {
            for (var i = first; i < end; i++)
                keys[i] = new Key(Rank(entries[i].Verdict), ShareLeft(entries[i]), entries[i]);
        });
        Shares.Sort(keys, entries.Count, Comparer.One);
        for (var i = 0; i < entries.Count; i++)
            entries[i] = keys[i].Entry;
        ArrayPool<Key>.Shared.Return(keys, clearArray: true);
        return entries;
    }

    private static int Rank(Verdict verdict) => verdict switch
    {
        Verdict.Short => 0,
        Verdict.Tight => 1,
        Verdict.Unknown => 2,
        _ => 3,
    };

    // Where nothing is asked nothing can run out, however little there is.
    private static double ShareLeft(LedgerEntry entry) => entry.Left is { } left && entry.Limit is { } limit
        ? entry.Demand is 0 && left >= 0 ? double.PositiveInfinity : left / Math.Max(1e-9, Math.Abs(limit))
        : double.NegativeInfinity;

    private readonly record struct Key(int Rank, double ShareLeft, LedgerEntry Entry);

    private sealed class Comparer : IComparer<Key>
    {
        public static readonly Comparer One = new();

        public int Compare(Key left, Key right)
        {
            if (left.Rank != right.Rank)
                return left.Rank.CompareTo(right.Rank);
            if (left.ShareLeft != right.ShareLeft)
                return left.ShareLeft.CompareTo(right.ShareLeft);
            var (first, second) = (left.Entry, right.Entry);
            var by = string.CompareOrdinal(first.Discipline, second.Discipline);
            by = by != 0 ? by : string.CompareOrdinal(first.Subject, second.Subject);
            return by != 0 ? by : string.CompareOrdinal(first.Quantity, second.Quantity);
        }
    }
}

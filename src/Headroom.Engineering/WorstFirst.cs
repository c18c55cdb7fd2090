using System.Buffers;
using Headroom.Domain.Ledgers;

namespace Headroom.Engineering;

/// <summary>The order of a ledger: short first, then tight, unknown, clear; within a verdict the least left as a share of the limit; then by name.</summary>
internal static class WorstFirst
{
    private const int Ranks = 4;

    /// <summary>The entries in that order.</summary>
    public static List<LedgerEntry> Sorted(List<LedgerEntry> entries)
    {
        // Numbers are sorted, not entries: of a large site those do not fit the processor's memory, and names are compared only where the numbers agree.
        var (keys, order) = (ArrayPool<ulong>.Shared.Rent(entries.Count), ArrayPool<LedgerEntry>.Shared.Rent(entries.Count));
        var from = 0;
        for (var rank = 0; rank < Ranks; rank++)
        {
            var to = from;
            foreach (var entry in entries)
            {
                if (Rank(entry.Verdict) != rank)
                    continue;
                (keys[to], order[to]) = (Sortable(ShareLeft(entry)), entry);
                to++;
            }

            Array.Sort(keys, order, from, to - from);
            ByName(keys, order, from, to);
            from = to;
        }

        for (var i = 0; i < entries.Count; i++)
            entries[i] = order[i];
        ArrayPool<ulong>.Shared.Return(keys);
        ArrayPool<LedgerEntry>.Shared.Return(order, clearArray: true);
        return entries;
    }

    private static void ByName(ulong[] keys, LedgerEntry[] order, int from, int to)
    {
        while (from < to)
        {
            var end = from + 1;
            while (end < to && keys[end] == keys[from])
                end++;
            if (end - from > 1)
                Array.Sort(order, from, end - from, Names.One);
            from = end;
        }
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

    // A whole number that is the greater, the greater the number is (IEEE 754); zero added makes one of the two zeros.
    private static ulong Sortable(double number)
    {
        var bits = BitConverter.DoubleToUInt64Bits(number + 0.0);
        return (bits & 1UL << 63) != 0 ? ~bits : bits | 1UL << 63;
    }

    private sealed class Names : IComparer<LedgerEntry>
    {
        public static readonly Names One = new();

        public int Compare(LedgerEntry? first, LedgerEntry? second)
        {
            var by = string.CompareOrdinal(first!.Discipline, second!.Discipline);
            by = by != 0 ? by : string.CompareOrdinal(first.Subject, second.Subject);
            return by != 0 ? by : string.CompareOrdinal(first.Quantity, second.Quantity);
        }
    }
}

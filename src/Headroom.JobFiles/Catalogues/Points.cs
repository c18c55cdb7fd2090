using Headroom.Domain.Findings;
using Headroom.JobFiles.Fields;

namespace Headroom.JobFiles.Catalogues;

/// <summary>Tables of two values each, such as minutes by load.</summary>
internal static class Points
{
    /// <summary>A map whose keys and values are both values with units.</summary>
    public static MapShape<TKey, T> Table<TKey, T>(Shape<TKey> keys, Shape<T> values, (string Key, string Value) example) =>
        new("", keys, values) { KeyExample = example.Key, ThingExample = example.Value };

    /// <summary>The entries in rising order of their keys; of two alike the first is kept, with a finding.</summary>
    public static IReadOnlyList<Entry<TKey, T>> InOrder<TKey, T>(IReadOnlyList<Entry<TKey, T>> entries, Func<TKey, double> key, FieldReader reader)
    {
        var sorted = new List<Entry<TKey, T>>(entries.Count);
        // Nearly always written in order already; this keeps those alike in the order written.
        foreach (var entry in entries)
        {
            var at = sorted.Count;
            while (at > 0 && key(sorted[at - 1].Key) > key(entry.Key))
                at--;
            sorted.Insert(at, entry);
        }

        for (var i = sorted.Count - 1; i > 0; i--)
        {
            if (key(sorted[i].Key) > key(sorted[i - 1].Key))
                continue;
            var (first, second) = (sorted[i - 1].At, sorted[i].At);
            reader.Refuse(Slips.Twice, second, $"{reader.Name} has the same key twice (first in line {first.Line}, column {first.Column})", "each key once", "keep one of them");
            sorted.RemoveAt(i);
        }

        return sorted;
    }

    /// <summary>Adds a finding for each entry that is more than the one before it.</summary>
    /// <param name="entries">The entries in rising order of their keys.</param>
    /// <param name="value">The figure that can only fall.</param>
    /// <param name="reader">Takes the findings.</param>
    /// <param name="falls">What falls, in words: <c>minutes, the more watts the fewer</c>.</param>
    /// <param name="strictly">True when two alike are refused as well, as of a table that is read both ways.</param>
    public static void CheckFalling<TKey, T>(IReadOnlyList<Entry<TKey, T>> entries, Func<T, double> value, FieldReader reader, string falls, bool strictly = false)
    {
        for (var i = 1; i < entries.Count; i++)
        {
            var (now, before) = (value(entries[i].Value), value(entries[i - 1].Value));
            if (now > before || (strictly && now == before))
                Refuse(entries[i].At, reader, now == before ? "stands still" : "rises", falls);
        }
    }

    private static void Refuse(Place at, FieldReader reader, string does, string falls) =>
        reader.Refuse(ModelSlips.Rising, at, $"{reader.Name} {does} here", falls, "compare the row with those around it; two may be swapped");
}

using Headroom.JobFiles.Editing;
using Headroom.JobFiles.Yaml;

namespace Headroom.JobFiles.Changes;

/// <summary>What differs between two texts of a job, field by field. Remarks and layout say nothing and do not count.</summary>
public static class JobChanges
{
    // Lists this near the top are rows that people add to (readings, prices); deeper ones are one value.
    private const int DeepestRows = 2;

    /// <summary>The fields that differ; null when one of the texts is no whole tree.</summary>
    /// <param name="before">The one text.</param>
    /// <param name="after">The other.</param>
    public static IReadOnlyList<FieldChange>? Between(string before, string after)
    {
        var (left, right) = (YamlText.Parse(before, "").Value, YamlText.Parse(after, "").Value);
        return left is null || right is null ? null : Between(left, right);
    }

    /// <summary>The fields that differ between two trees.</summary>
    internal static List<FieldChange> Between(YamlNode before, YamlNode after)
    {
        var changes = new List<FieldChange>();
        Compare([], before, after, changes);
        return changes;
    }

    private static void Compare(List<string> path, YamlNode? before, YamlNode? after, List<FieldChange> into)
    {
        if (Same(before, after))
            return;
        switch (before, after)
        {
            case (YamlMap left, YamlMap right):
                CompareMaps(path, left, right, into);
                break;
            case (YamlList or null, YamlList or null) when path.Count is > 0 and <= DeepestRows:
                CompareRows(path, (before as YamlList)?.Items ?? [], (after as YamlList)?.Items ?? [], into);
                break;
            default:
                into.Add(new([.. path], Written(before), Written(after)));
                break;
        }
    }

    private static void CompareMaps(List<string> path, YamlMap left, YamlMap right, List<FieldChange> into)
    {
        foreach (var entry in left.Entries)
            Below(path, entry.Key.Text, entry.Value, right.Find(entry.Key.Text)?.Value, into);
        foreach (var entry in right.Entries.Where(entry => left.Find(entry.Key.Text) is null))
            Below(path, entry.Key.Text, null, entry.Value, into);
    }

    private static void Below(List<string> path, string key, YamlNode? before, YamlNode? after, List<FieldChange> into)
    {
        path.Add(key);
        Compare(path, before, after, into);
        path.RemoveAt(path.Count - 1);
    }

    // Without what is the same at both ends, rows are exchanged in their order; what is left over was put in or taken out.
    private static void CompareRows(List<string> path, IReadOnlyList<YamlNode> left, IReadOnlyList<YamlNode> right, List<FieldChange> into)
    {
        var head = 0;
        while (head < left.Count && head < right.Count && TreeCheck.Same(left[head], right[head]))
            head++;
        var tail = 0;
        while (tail < left.Count - head && tail < right.Count - head && TreeCheck.Same(left[^(tail + 1)], right[^(tail + 1)]))
            tail++;
        string[] row = [.. path, FieldChange.Item];
        var (gone, come) = (left.Count - head - tail, right.Count - head - tail);
        for (var at = 0; at < Math.Max(gone, come); at++)
            into.Add(new(row, at < gone ? YamlWriter.Flow(left[head + at]) : null, at < come ? YamlWriter.Flow(right[head + at]) : null));
    }

    private static bool Same(YamlNode? left, YamlNode? right) => IsNothing(left) ? IsNothing(right) : !IsNothing(right) && TreeCheck.Same(left!, right!);

    private static bool IsNothing(YamlNode? node) => node is null or YamlScalar { IsEmpty: true } or YamlMap { Entries.Count: 0 } or YamlList { Items.Count: 0 };

    private static string? Written(YamlNode? node) => IsNothing(node) ? null : YamlWriter.Flow(node!);
}

using Headroom.JobFiles.Yaml;

namespace Headroom.JobFiles.Editing;

/// <summary>Makes sure that an edited text says what it said before, and the change, and nothing else.</summary>
internal static class TreeCheck
{
    /// <summary>Says whether a map is another one with one entry put in or replaced.</summary>
    /// <param name="before">The map as it was; null or an empty text for none.</param>
    /// <param name="after">The map as it is.</param>
    /// <param name="key">The key of the entry.</param>
    /// <param name="isWanted">Says whether its value is right, given the old value (or null) and the new one.</param>
    /// <returns>True when all other entries are the same, in the same order.</returns>
    public static bool IsMapWith(YamlNode? before, YamlNode after, string key, Func<YamlNode?, YamlNode, bool> isWanted)
    {
        if (after is not YamlMap now || !IsNothingOr<YamlMap>(before))
            return false;
        var then = (before as YamlMap)?.Entries ?? [];
        var others = now.Entries.Where(e => e.Key.Text != key).ToList();
        var old = then.FirstOrDefault(e => e.Key.Text == key);
        var place = then.TakeWhile(e => e.Key.Text != key).Count();
        return now.Entries.FirstOrDefault(e => e.Key.Text == key) is { } found
            && (old is null || now.Entries[place].Key.Text == key)
            && isWanted(old?.Value, found.Value)
            && Same([.. then.Where(e => e.Key.Text != key)], others, Same);
    }

    /// <summary>Says whether a list is another one with one item put in behind, or replaced.</summary>
    public static bool IsListWith(YamlNode? before, YamlNode after, int? replaced, YamlNode item)
    {
        if (after is not YamlList now || !IsNothingOr<YamlList>(before))
            return false;
        var wanted = ((before as YamlList)?.Items ?? []).ToList();
        if (replaced is { } index)
            wanted[index] = item;
        else
            wanted.Add(item);
        return Same(wanted, now.Items, Same);
    }

    /// <summary>Says whether two trees say the same.</summary>
    public static bool Same(YamlNode left, YamlNode right) => (left, right) switch
    {
        (YamlScalar a, YamlScalar b) => (a.IsUnknown && b.IsUnknown) || (a.IsEmpty && b.IsEmpty) || (a.Text == b.Text && a.IsUnknown == b.IsUnknown && a.IsEmpty == b.IsEmpty),
        (YamlMap a, YamlMap b) => Same(a.Entries, b.Entries, Same),
        (YamlList a, YamlList b) => Same(a.Items, b.Items, Same),
        _ => false,
    };

    private static bool Same(YamlEntry left, YamlEntry right) => Same(left.Key, right.Key) && Same(left.Value, right.Value);

    private static bool Same<T>(IReadOnlyList<T> left, IReadOnlyList<T> right, Func<T, T, bool> same) =>
        left.Count == right.Count && left.Zip(right).All(pair => same(pair.First, pair.Second));

    private static bool IsNothingOr<T>(YamlNode? node)
        where T : YamlNode => node is null or T or YamlScalar { IsEmpty: true };
}

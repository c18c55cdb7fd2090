using Headroom.Domain.Findings;

namespace Headroom.JobFiles.Yaml;

/// <summary>Puts entries or items into a tree, below some keys. The tree itself stays as it is.</summary>
internal static class TreeGraft
{
    /// <summary>The tree with entries behind those that stand below the keys; of a list their values.</summary>
    /// <param name="node">The tree; null or an empty text where there is none yet.</param>
    /// <param name="path">The keys that lead to the place.</param>
    /// <param name="entries">What is put in.</param>
    /// <param name="isList">True when the values stand there one after the other, without keys.</param>
    /// <returns>The new tree; null when something else stands there.</returns>
    public static YamlNode? Put(YamlNode? node, IReadOnlyList<string> path, IReadOnlyList<YamlEntry> entries, bool isList)
    {
        var at = node?.At ?? entries[0].Key.At;
        if (path.Count == 0 && isList)
            return node is YamlList || IsNothing(node) ? new YamlList([.. (node as YamlList)?.Items ?? [], .. entries.Select(entry => entry.Value)], true, at, Span(node)) : null;
        if (node is not YamlMap && !IsNothing(node))
            return null;
        var map = node as YamlMap;
        var before = map?.Entries ?? [];
        return path.Count == 0
            ? new YamlMap([.. before, .. entries], true, at, Span(node))
            : Below(map, path, (at, entries, isList));
    }

    private static YamlMap? Below(YamlMap? map, IReadOnlyList<string> path, (Place At, IReadOnlyList<YamlEntry> Entries, bool IsList) put)
    {
        var old = map?.Find(path[0]);
        if (Put(old?.Value, [.. path.Skip(1)], put.Entries, put.IsList) is not { } value)
            return null;
        var entry = new YamlEntry(old?.Key ?? new YamlScalar(path[0], YamlStyle.Plain, put.At, (0, 0)), value);
        IReadOnlyList<YamlEntry> before = map?.Entries ?? [];
        return new YamlMap(old is null ? [.. before, entry] : [.. before.Select(one => one == old ? entry : one)], true, put.At, Span(map));
    }

    private static bool IsNothing(YamlNode? node) => node is null or YamlScalar { IsEmpty: true };

    private static (int Start, int End) Span(YamlNode? node) => (node?.Start ?? 0, node?.End ?? 0);
}

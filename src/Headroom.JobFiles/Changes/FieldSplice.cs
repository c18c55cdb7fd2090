using Headroom.JobFiles.Editing;
using Headroom.JobFiles.Yaml;

namespace Headroom.JobFiles.Changes;

/// <summary>Where one field stands in a text, and what is to stand there instead.</summary>
internal sealed class FieldSplice(string text, YamlMap root)
{
    private readonly TextLines _lines = new(text);

    /// <summary>The piece to be replaced; null when it cannot be told.</summary>
    public Splice? Of(FieldChange change)
    {
        var isItem = change.Path[^1] == FieldChange.Item;
        IReadOnlyList<string> above = [.. change.Path.SkipLast(1)];
        if (isItem && change.Before is { } before)
            return Item(above, before, change.After);
        if (change.After is { } after)
            return isItem ? Add(above, "item", after, isList: true) : Find(above) is YamlMap map && map.Find(change.Path[^1]) is { } there ? Replace(map, there, after) : Add(above, change.Path[^1], after, isList: false);
        return Find(above) is YamlMap holder && holder.Find(change.Path[^1]) is { } entry ? Remove(holder, entry) : new Splice(0, 0, "");
    }

    private YamlNode? Find(IReadOnlyList<string> path)
    {
        YamlNode? at = root;
        foreach (var key in path)
            at = (at as YamlMap)?.Find(key)?.Value;
        return at;
    }

    private Splice? Add(IReadOnlyList<string> path, string key, string value, bool isList)
    {
        var row = YamlText.Parse($"{YamlWriter.Text(key)}: {value}", "");
        if (row is not { Ok: true, Value: YamlMap { Entries: [var entry] } })
            return null;
        if (path.Count > 0)
            return new RowsEdit(_lines, root).Put(path, [entry], isList);
        return root.IsFlow ? new FlowEdit(_lines).Add(root, RowsEdit.Entry(entry)) : new BlockEdit(_lines).AddSection(root, YamlWriter.Text(key), new NewValue(null, value));
    }

    private Splice Replace(YamlMap map, YamlEntry entry, string value)
    {
        if (entry.Value.End > entry.Value.Start && (map.IsFlow || entry.Value is YamlScalar or YamlMap { IsFlow: true } or YamlList { IsFlow: true }))
            return new(entry.Value.Start, entry.Value.End, value);
        if (map.IsFlow)
        {
            var colon = text.AsSpan(entry.Key.End).StartsWith(":");
            return new(entry.Key.End, entry.Key.End + (colon ? 1 : 0), ": " + value);
        }

        return new BlockEdit(_lines).Replace(entry, new NewValue(null, value), 0);
    }

    private Splice? Item(IReadOnlyList<string> path, string before, string? after)
    {
        if (Find(path) is not YamlList list)
            return null;
        var at = list.Items.ToList().FindIndex(item => YamlWriter.Flow(item) == before);
        if (at < 0)
            return null;
        var found = list.Items[at];
        if (after is not null)
            return list.IsFlow || IsFlow(found) ? new(found.Start, found.End, after) : new(found.Start, _lines.OwnedEnd(found.End, _lines.Column(found.Start) - 1), after);
        return list.IsFlow ? Without([.. list.Items.Select(item => (item.Start, item.End))], at) : Lines(found.Start, found.End);
    }

    private Splice Remove(YamlMap map, YamlEntry entry)
    {
        var spans = map.Entries.Select(one => (one.Key.Start, Math.Max(one.Value.End, one.Key.End))).ToList();
        return map.IsFlow ? Without(spans, map.Entries.ToList().IndexOf(entry)) : Lines(entry.Key.Start, spans[map.Entries.ToList().IndexOf(entry)].Item2);
    }

    // With the comma behind it, or of the last with the one before.
    private static Splice Without(List<(int Start, int End)> spans, int at) =>
        at + 1 < spans.Count ? new(spans[at].Start, spans[at + 1].Start, "")
        : at > 0 ? new(spans[at - 1].End, spans[at].End, "")
        : new(spans[at].Start, spans[at].End, "");

    // Whole lines, with the remarks that lie deeper; a dash in front of an item is on its line.
    private Splice Lines(int start, int end)
    {
        var column = _lines.Column(start);
        var owned = _lines.OwnedEnd(end, column);
        var first = start - column;
        var next = owned < text.Length && text[owned] == '\r' && owned + 1 < text.Length && text[owned + 1] == '\n' ? owned + 2 : Math.Min(text.Length, owned + 1);
        return new(first, next, "");
    }

    private static bool IsFlow(YamlNode node) => node is YamlScalar or YamlMap { IsFlow: true } or YamlList { IsFlow: true };
}

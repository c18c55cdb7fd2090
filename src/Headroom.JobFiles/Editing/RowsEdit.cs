using Headroom.JobFiles.Yaml;

namespace Headroom.JobFiles.Editing;

/// <summary>Puts many entries or items into a text in one go, below some keys, in the style in which the place is written.</summary>
internal sealed class RowsEdit(TextLines lines, YamlMap root)
{
    private readonly BlockEdit _block = new(lines);
    private readonly FlowEdit _flow = new(lines);

    /// <summary>Puts them in; null when something else stands at the place.</summary>
    /// <param name="path">The keys that lead to it.</param>
    /// <param name="rows">The entries; of a list their values.</param>
    /// <param name="isList">True when they stand there one after the other.</param>
    public Splice? Put(IReadOnlyList<string> path, IReadOnlyList<YamlEntry> rows, bool isList)
    {
        var at = root;
        for (var depth = 0; depth < path.Count; depth++)
        {
            if (at.Find(path[depth]) is not { } entry)
                return Add(at, [.. path.Skip(depth)], Value(rows, isList));
            if (IsBare(entry.Value))
                return Fill(at, entry, Under([.. path.Skip(depth + 1)], Value(rows, isList)));
            if (depth == path.Count - 1)
                return Behind(entry.Value, rows, isList);
            if (entry.Value is not YamlMap map)
                return null;
            at = map;
        }

        return null;
    }

    private Splice? Behind(YamlNode node, IReadOnlyList<YamlEntry> rows, bool isList) => (node, isList) switch
    {
        (YamlMap { IsFlow: true } map, false) => _flow.Add(map, string.Join(", ", rows.Select(Entry))),
        (YamlList { IsFlow: true } list, true) => _flow.Add(list, string.Join(", ", rows.Select(row => YamlWriter.Flow(row.Value)))),
        (YamlMap map, false) => _block.AddLines(map, lines.Column(map.Entries[0].Key.Start), Value(rows, false)),
        (YamlList list, true) => _block.AddLines(list, lines.Column(list.Start), Value(rows, true)),
        _ => null,
    };

    private Splice Add(YamlMap map, IReadOnlyList<string> path, NewValue value)
    {
        var inside = Under([.. path.Skip(1)], value);
        var key = YamlWriter.Text(path[0]);
        if (map.IsFlow)
            return _flow.Add(map, $"{key}: {inside.Flow}");
        return map == root ? _block.AddSection(root, key, inside) : _block.Add(map, key, inside);
    }

    private Splice Fill(YamlMap map, YamlEntry entry, NewValue value) =>
        map.IsFlow ? new(entry.Value.Start, entry.Value.End, value.Flow) : _block.Fill(entry, value, _block.Step(root));

    private NewValue Under(IReadOnlyList<string> path, NewValue value) =>
        path.Reverse().Aggregate(value, (inside, key) => inside.Under(YamlWriter.Text(key), _block.Step(root)));

    private static NewValue Value(IReadOnlyList<YamlEntry> rows, bool isList) => isList
        ? new([.. rows.Select(row => "- " + YamlWriter.Flow(row.Value))], $"[{string.Join(", ", rows.Select(row => YamlWriter.Flow(row.Value)))}]")
        : new([.. rows.Select(Entry)], $"{{{string.Join(", ", rows.Select(Entry))}}}");

    /// <summary>An entry as a line of a job file.</summary>
    public static string Entry(YamlEntry entry) => $"{YamlWriter.Text(entry.Key.Text)}: {YamlWriter.Flow(entry.Value)}";

    private bool IsBare(YamlNode value) => value switch
    {
        YamlScalar scalar => scalar.IsEmpty,
        YamlMap map => map.Entries.Count == 0 && !HoldsComment(map),
        YamlList list => list.Items.Count == 0 && !HoldsComment(list),
        _ => false,
    };

    private bool HoldsComment(YamlNode node) => lines.Text.AsSpan(node.Start, node.End - node.Start).Contains('#');
}

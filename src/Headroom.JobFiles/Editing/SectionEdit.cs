using Headroom.JobFiles.Yaml;

namespace Headroom.JobFiles.Editing;

/// <summary>Puts a design or an item into its section, in the style in which the section is written.</summary>
internal sealed class SectionEdit(TextLines lines, YamlMap root)
{
    private readonly BlockEdit _block = new(lines);
    private readonly FlowEdit _flow = new(lines);

    /// <summary>Puts an entry into a section that is a map; null when the section is something else.</summary>
    public Splice? Put((string Key, YamlEntry? Entry) section, (string Id, NewValue Value) put)
    {
        var id = YamlWriter.Text(put.Id);
        if (section.Entry is null || IsBare(section.Entry.Value))
            return Begin(section, put.Value.Under(id, _block.Step(root)));
        if (section.Entry.Value is not YamlMap map)
            return null;
        var old = map.Entries.FirstOrDefault(e => e.Key.Text == put.Id);
        if (map.IsFlow)
            return old is null ? _flow.Add(map, $"{id}: {put.Value.Flow}") : new(old.Value.Start, old.Value.End, put.Value.Flow);
        return old is null ? _block.Add(map, id, put.Value) : _block.Replace(old, put.Value, _block.Step(map));
    }

    /// <summary>Puts an item into a section that is a list, or in the place of one there; null when the section is something else.</summary>
    public Splice? Put((string Key, YamlEntry? Entry) section, string item, int? index)
    {
        if (section.Entry is null || IsBare(section.Entry.Value))
            return Begin(section, NewValue.ListOf(item));
        if (section.Entry.Value is not YamlList list)
            return null;
        if (index is { } i)
            return new(list.Items[i].Start, list.Items[i].End, item);
        return list.IsFlow ? _flow.Add(list, item) : _block.Add(list, item);
    }

    private Splice Begin((string Key, YamlEntry? Entry) section, NewValue value)
    {
        if (section.Entry is not { } entry)
            return root.IsFlow ? _flow.Add(root, $"{section.Key}: {value.Flow}") : _block.AddSection(root, section.Key, value);
        return root.IsFlow
            ? new(entry.Value.Start, entry.Value.End, value.Flow)
            : _block.Fill(entry, value, _block.Step(root));
    }

    // Nothing, or brackets with nothing between them; with a comment between them they are kept.
    private bool IsBare(YamlNode value) => value switch
    {
        YamlScalar scalar => scalar.IsEmpty,
        YamlMap map => map.Entries.Count == 0 && !HoldsComment(map),
        YamlList list => list.Items.Count == 0 && !HoldsComment(list),
        _ => false,
    };

    private bool HoldsComment(YamlNode node) => lines.Text.AsSpan(node.Start, node.End - node.Start).Contains('#');
}

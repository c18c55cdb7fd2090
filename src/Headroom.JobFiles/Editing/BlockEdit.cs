using Headroom.JobFiles.Yaml;

namespace Headroom.JobFiles.Editing;

/// <summary>Changes in maps and lists that are written in lines.</summary>
internal sealed class BlockEdit(TextLines lines)
{
    private const int UsualStep = 2;

    /// <summary>Replaces the value of an entry. Comments on the line of the key stay; deeper ones below it were about the old value.</summary>
    public Splice Replace(YamlEntry entry, NewValue value, int step)
    {
        var column = lines.Column(entry.Key.Start);
        var colon = Colon(entry);
        var isInline = IsInline(entry);
        var rest = isInline ? Rest(entry.Value.End) : Rest(colon);
        var end = lines.OwnedEnd(entry.Value.End, column);
        return new(colon, end, value.Lines is null ? $" {value.Flow}{rest}" : rest + value.Below(column + step, lines.NewLine));
    }

    /// <summary>Puts a first value under a key that has none, behind the comments that stand there.</summary>
    public Splice Fill(YamlEntry entry, NewValue value, int step)
    {
        var column = lines.Column(entry.Key.Start);
        var colon = Colon(entry);
        var from = Math.Max(colon, entry.Value.End);
        var end = lines.OwnedEnd(from, column);
        var kept = lines.Text[from..end];
        return new(colon, end, kept + value.Below(column + step, lines.NewLine));
    }

    /// <summary>Puts a new entry behind the last of a map.</summary>
    public Splice Add(YamlMap map, string key, NewValue value)
    {
        var column = lines.Column(map.Entries[0].Key.Start);
        var end = lines.OwnedEnd(map.End, column);
        return new(end, end, value.Under(key, Step(map)).Below(column, lines.NewLine));
    }

    /// <summary>Puts a new item behind the last of a list.</summary>
    public Splice Add(YamlList list, string item)
    {
        var column = lines.Column(list.Start);
        var end = lines.OwnedEnd(list.End, column);
        return new(end, end, NewValue.ListOf(item).Below(column, lines.NewLine));
    }

    /// <summary>Puts lines behind the last of a map or list.</summary>
    public Splice AddLines(YamlNode node, int column, NewValue value)
    {
        var end = lines.OwnedEnd(node.End, column);
        return new(end, end, value.Below(column, lines.NewLine));
    }

    /// <summary>Puts a new section into the file: behind those that come before it in a job file, and at the end when it is the last.</summary>
    public Splice AddSection(YamlMap root, string key, NewValue value)
    {
        var before = root.Entries.LastOrDefault(e => SectionOrder.Of(e.Key.Text) <= SectionOrder.Of(key));
        var column = lines.Column(root.Entries[0].Key.Start);
        var end = before is null || before == root.Entries[^1]
            ? lines.DocumentEnd(root.End)
            : lines.OwnedEnd(before.Value.End, column);
        return new(end, end, lines.NewLine + value.Under(key, Step(root)).Below(column, lines.NewLine));
    }

    /// <summary>How much deeper than its keys a map's values lie, by the first that shows it.</summary>
    public int Step(YamlMap map)
    {
        foreach (var entry in map.Entries)
        {
            if (entry.Value is YamlMap { IsFlow: false } value && !IsInline(entry))
                return lines.Column(value.Start) - lines.Column(entry.Key.Start);
        }

        return UsualStep;
    }

    private int Colon(YamlEntry entry) => lines.Text.IndexOf(':', entry.Key.End) + 1;

    private bool IsInline(YamlEntry entry) => entry.Value.Start <= lines.LineEnd(entry.Key.End) && entry.Value.End > entry.Value.Start;

    private string Rest(int index) => lines.Text[index..lines.LineEnd(index)].TrimEnd();
}

using Headroom.JobFiles.Yaml;

namespace Headroom.JobFiles.Editing;

/// <summary>Changes in maps and lists that are written in braces or brackets, on one line or on several.</summary>
internal sealed class FlowEdit(TextLines lines)
{
    /// <summary>Puts a new piece behind the last one of a map.</summary>
    public Splice Add(YamlMap map, string piece) =>
        map.Entries.Count == 0 ? First(map, piece) : Behind((map.Entries[^1].Key.Start, map.Entries[^1].Value.End), piece);

    /// <summary>Puts a new piece behind the last one of a list.</summary>
    public Splice Add(YamlList list, string piece) =>
        list.Items.Count == 0 ? First(list, piece) : Behind((list.Items[^1].Start, list.Items[^1].End), piece);

    private static Splice First(YamlNode node, string piece) => new(node.Start + 1, node.Start + 1, piece);

    // Where the pieces stand on lines of their own, so does the new one, and a comment stays beside the piece it was about.
    private Splice Behind((int Start, int End) last, string piece)
    {
        var comma = CommaBehind(last.End);
        var rest = comma ?? last.End;
        if (!BeginsLine(last.Start) || !lines.IsRestComment(rest))
            return new(last.End, last.End, ", " + piece);
        var end = lines.LineEnd(rest);
        var kept = lines.Text[rest..end];
        var depth = new string(' ', lines.Column(last.Start));
        return comma is null
            ? new(last.End, end, "," + kept + lines.NewLine + depth + piece)
            : new(end, end, lines.NewLine + depth + piece + ",");
    }

    private int? CommaBehind(int index)
    {
        while (index < lines.Text.Length && lines.Text[index] == ' ')
            index++;
        return index < lines.Text.Length && lines.Text[index] == ',' ? index + 1 : null;
    }

    private bool BeginsLine(int index) => string.IsNullOrWhiteSpace(lines.Text[(index - lines.Column(index))..index]);
}

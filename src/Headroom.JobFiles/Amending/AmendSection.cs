using Headroom.JobFiles.Editing;
using Headroom.JobFiles.Jobs;
using Headroom.JobFiles.Sheets;
using Headroom.JobFiles.Yaml;

namespace Headroom.JobFiles.Amending;

/// <summary>Changes the entries of one section of a job file, in its text and in its tree alike.</summary>
/// <param name="lines">The text.</param>
/// <param name="section">The section.</param>
/// <param name="slips">Takes the findings.</param>
internal sealed class AmendSection(TextLines lines, YamlMap section, SheetSlips slips)
{
    private readonly List<Splice> _splices = [];
    private readonly Dictionary<YamlEntry, IReadOnlyList<YamlEntry>> _changed = [];

    /// <summary>What to replace in the text.</summary>
    public IReadOnlyList<Splice> Splices => _splices;

    /// <summary>The section as it is to be.</summary>
    public YamlMap Tree => new([.. section.Entries.SelectMany(entry => _changed.TryGetValue(entry, out var now) ? now : [entry])], section.IsFlow, section.At, (section.Start, section.End));

    /// <summary>The entry in which a thing stands; null when it stands in none of them.</summary>
    public YamlEntry? Find(string name) => section.Entries.FirstOrDefault(entry => Names(entry).Contains(name));

    /// <summary>Changes the things of one entry.</summary>
    /// <param name="entry">The entry.</param>
    /// <param name="rows">What was changed of the things in it.</param>
    /// <param name="own">What each thing of a range says for itself where the range goes in step: its drop, its port.</param>
    public void Change(YamlEntry entry, IReadOnlyList<AmendRow> rows, Func<string, string?> own)
    {
        var names = Names(entry);
        if (names.All(name => rows.Any(row => row.Key == name && row.IsTakenOut)))
        {
            TakeOut(entry, rows[0]);
            return;
        }

        if (names.Count == 1)
        {
            var value = Amended(entry.Value, rows[0]);
            // Rules speak of a thing where its name stands: in the edited table.
            _changed[entry] = [new YamlEntry(new YamlScalar(entry.Key.Text, entry.Key.Style, rows[0].At, (entry.Key.Start, entry.Key.End)), value)];
            _splices.AddRange(Splice(entry, rows[0], value));
            return;
        }

        if (lines.Text[entry.Key.Start..entry.Value.End].Contains('#'))
        {
            slips.Refuse(SheetCodes.Elsewhere, rows[0].At, ($"{rows[0].Key} is one of {entry.Key.Text} ({entry.Key.At}), between which a remark stands", "a line of its own in the job file", "write it by itself there, then try again"));
            return;
        }

        var apart = names.Where(name => !rows.Any(row => row.Key == name && row.IsTakenOut)).Select(name => new YamlEntry(Plain(name, rows.FirstOrDefault(row => row.Key == name)?.At ?? entry.Key.At), rows.FirstOrDefault(row => row.Key == name) is { } row ? Amended(Own(entry.Value, own(name)), row) : Own(entry.Value, own(name)))).ToList();
        var together = Together(apart, names);
        _changed[entry] = together;
        var between = section.IsFlow ? ", " : lines.NewLine + new string(' ', lines.Column(entry.Key.Start));
        _splices.Add(new(entry.Key.Start, entry.Value.End, string.Join(between, together.Select(RowsEdit.Entry))));
    }

    /// <summary>What stands behind the name of a thing that the job does not have yet.</summary>
    public static YamlNode New(AmendRow row) => Amended(new YamlMap([], isFlow: true, row.At, (0, 0)), row);

    private static YamlNode Amended(YamlNode value, AmendRow row)
    {
        if (row.Design is not null)
            return Port(value as YamlScalar, row);
        var map = value as YamlMap ?? new YamlMap(value is YamlScalar { IsEmpty: false } model ? [new YamlEntry(Plain("model", model.At), model)] : [], isFlow: true, value.At, (0, 0));
        var entries = map.Entries.ToList();
        foreach (var (column, _, after, cell) in row.Cells)
        {
            var said = new YamlScalar(after ?? "unknown", YamlStyle.Plain, cell.At, (0, 0));
            var at = entries.FindIndex(entry => YamlKey.Same(entry.Key.Text, column.Name));
            if (at >= 0)
                entries[at] = entries[at] with { Value = said };
            else
                entries.Add(new YamlEntry(new YamlScalar(column.Name, YamlStyle.Plain, cell.At, (0, 0)), said));
        }

        return new YamlMap(entries, map.IsFlow, map.At, (map.Start, map.End));
    }

    // A cord is one text: unit/port, or none where nothing is plugged in any more.
    private static YamlScalar Port(YamlScalar? before, AmendRow row)
    {
        var parts = before?.Text.Split('/') ?? [];
        string? Of(string name, string? otherwise) => row.Cells.Where(cell => cell.Column.Name == name).Select(cell => (Told: true, cell.After)).FirstOrDefault() is (true, var after) ? after : otherwise;
        var (unit, port) = (Of("unit", parts.ElementAtOrDefault(0)), Of("port", parts.ElementAtOrDefault(1)));
        var at = row.Cells.Count > 0 ? row.Cells[0].Cell.At : row.At;
        return new YamlScalar(unit is null ? "none" : port is null ? unit : $"{unit}/{port}", YamlStyle.Plain, at, (0, 0));
    }

    private void TakeOut(YamlEntry entry, AmendRow row)
    {
        if (section.IsFlow || section.Entries.Count == 1)
        {
            slips.Refuse(SheetCodes.Elsewhere, row.At, ($"{row.Key} stands in one line with others ({entry.Key.At}), or alone", "a line of its own, beside others", "take it out of the job file by hand"));
            return;
        }

        _changed[entry] = [];
        var end = lines.LineEnd(entry.Value.End);
        _splices.Add(new(entry.Key.Start - lines.Column(entry.Key.Start), Math.Min(lines.Text.Length, end + lines.NewLine.Length), ""));
    }

    private IEnumerable<Splice> Splice(YamlEntry entry, AmendRow row, YamlNode now)
    {
        if (entry.Value is not YamlMap map || now is not YamlMap wanted)
            return [new(entry.Value.Start, entry.Value.End, (entry.Value.Start == entry.Key.End + 1 ? " " : "") + (now is YamlScalar scalar ? YamlWriter.Word(scalar.Text) : YamlWriter.Flow(now)))];
        var replaced = map.Entries.Zip(wanted.Entries).Where(pair => pair.First != pair.Second).Select(pair => new Splice(pair.First.Value.Start, pair.First.Value.End, Text(pair.Second.Value)));
        var added = wanted.Entries.Skip(map.Entries.Count).Select(one => $"{one.Key.Text}: {Text(one.Value)}").ToList();
        if (added.Count == 0)
            return replaced;
        var put = map.IsFlow ? new FlowEdit(lines).Add(map, string.Join(", ", added)) : new BlockEdit(lines).AddLines(map, lines.Column(map.Entries[0].Key.Start), new NewValue(added, ""));
        return [.. replaced, put];
    }

    private static string Text(YamlNode value) => value is YamlScalar { IsUnknown: true } ? "unknown" : YamlWriter.Flow(value);

    // Of a range that goes in step with another each has its own; a map has it under "drop".
    private static YamlNode Own(YamlNode value, string? own) => (value, own) switch
    {
        (_, null) => value,
        (YamlScalar { IsEmpty: false }, _) => new YamlScalar(own, YamlStyle.Plain, value.At, (0, 0)),
        (YamlMap map, _) when map.Find("drop") is { } drop => new YamlMap([.. map.Entries.Select(entry => entry == drop ? entry with { Value = new YamlScalar(own, YamlStyle.Plain, drop.Value.At, (0, 0)) } : entry)], true, map.At, (0, 0)),
        _ => value,
    };

    // Neighbours that say the same stay one line.
    private static List<YamlEntry> Together(List<YamlEntry> apart, IReadOnlyList<string> names)
    {
        var together = new List<YamlEntry>();
        for (var from = 0; from < apart.Count;)
        {
            var to = from;
            while (to + 1 < apart.Count && AreNeighbours(names, apart[to].Key.Text, apart[to + 1].Key.Text) && TreeCheck.Same(apart[to + 1].Value, apart[from].Value))
                to++;
            together.Add(to == from ? apart[from] : apart[from] with { Key = Plain($"{apart[from].Key.Text}..{apart[to].Key.Text}", apart[from].Key.At) });
            from = to + 1;
        }

        return together;
    }

    // What stood between two of them may have been taken out.
    private static bool AreNeighbours(IReadOnlyList<string> names, string one, string other) => names.ToList().IndexOf(other) == names.ToList().IndexOf(one) + 1;

    private static YamlScalar Plain(string text, Domain.Findings.Place at) => new(text, YamlStyle.Plain, at, (0, 0));

    private static IReadOnlyList<string> Names(YamlEntry entry)
    {
        var ends = entry.Key.Text.Split("..", StringSplitOptions.TrimEntries);
        return ends.Length == 2 && NameRange.Names(ends[0], ends[1]) is { } names ? names : [entry.Key.Text];
    }
}

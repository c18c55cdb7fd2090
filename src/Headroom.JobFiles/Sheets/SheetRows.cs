using Headroom.JobFiles.Jobs;
using Headroom.JobFiles.Yaml;

namespace Headroom.JobFiles.Sheets;

/// <summary>Makes of each row what would stand in a job file, and counts what is not known.</summary>
internal sealed class SheetRows(SheetKind kind, SheetPlan plan, CellReader cells, SheetSlips slips)
{
    private readonly Dictionary<string, (SheetRow Row, string Said)> _seen = [];
    private readonly List<YamlEntry> _entries = [];
    private readonly List<SheetTally> _tallies = [];
    private int _headings;
    private bool _named;

    /// <summary>The rows as entries: under their names, or with an empty key where they stand one after the other.</summary>
    public IReadOnlyList<YamlEntry> Entries => _entries;

    /// <summary>What the columns come to.</summary>
    public IReadOnlyList<SheetTally> Tallies => _tallies;

    /// <summary>How many rows were left because of a finding.</summary>
    public int Left { get; private set; }

    /// <summary>What stands in the rows that were left.</summary>
    public LeftRows LeftRows { get; } = new();

    /// <summary>How many rows say what another has said, or nothing at all.</summary>
    public int PassedOver { get; private set; }

    /// <summary>Reads all rows.</summary>
    public void Read(SheetTable table, IReadOnlyList<SheetColumn> columns)
    {
        var taken = columns.Where(column => column.IsTaken).ToList();
        _headings = columns.Count;
        _named = kind.Needs[0].Any(name => taken.Any(column => column.Field!.Name == name) || plan.Otherwise.Any(pair => pair.Key == name));
        var units = columns.FirstOrDefault(column => column.Field?.Kind == CellKind.Unit);
        var measured = taken.LastOrDefault(column => column.Index < (units?.Index ?? int.MaxValue) && column.Field!.Kind is CellKind.Quantity or CellKind.Measured or CellKind.Money)
            ?? taken.FirstOrDefault(column => column.Field!.Kind is CellKind.Quantity or CellKind.Measured or CellKind.Money);
        _tallies.AddRange(taken.Where(column => column.Field!.IsAsked).Select(column => new SheetTally(column)));
        foreach (var row in table.Rows)
            ReadRow(row, (taken, units, measured));
        foreach (var tally in _tallies.Where(tally => tally.Missing.Count > 0))
            slips.Ask(SheetCodes.MissingCells, tally.Missing[0].At, tally.Question(kind));
    }

    private void ReadRow(SheetRow row, (List<SheetColumn> Taken, SheetColumn? Units, SheetColumn? Measured) columns)
    {
        var values = new Dictionary<string, YamlScalar>();
        var whole = true;
        foreach (var column in columns.Taken)
        {
            var cell = row.Cell(column.Index);
            if (cell is null || cell.Text.Length == 0)
                continue;
            var unit = column == columns.Measured ? row.Cell(columns.Units?.Index ?? int.MaxValue)?.Text : null;
            if (cells.Read(cell, column, unit is { Length: > 0 } ? unit : null, out var refused) is { } text)
                values[column.Field!.Name] = new YamlScalar(text, YamlStyle.Plain, cell.At, (0, 0));
            whole &= !refused;
        }

        whole &= !slips.RefuseExtra(row, _headings);
        if (!whole)
        {
            Leave(row);
            return;
        }

        // Where no column names the things, that has been said once; not again for each row.
        if (_named)
            Add(row, values);
    }

    private void Add(SheetRow row, Dictionary<string, YamlScalar> values)
    {
        var said = Said(values);
        // What hangs on no drop is patched by its own name.
        if (kind == SheetKinds.Patching && values.Remove("device", out var device))
            values.TryAdd("drop", device);
        if (values.Count == 0 || (kind == SheetKinds.Patching && !values.ContainsKey("drop")))
        {
            // A list of all ports has rows without a drop: those ports are free.
            PassedOver++;
            return;
        }

        if (kind == SheetKinds.Patching && !values.ContainsKey("port"))
        {
            Count(row, values, 1);
            PassedOver++;
            return;
        }

        foreach (var (field, value) in plan.Otherwise)
            values.TryAdd(field, new YamlScalar(value, YamlStyle.Plain, plan.At, (0, 0)));
        if (RowMaker.Make(kind, row, values, slips) is not { } entry)
        {
            Leave(row);
            return;
        }

        var name = kind.IsList ? said : entry.Key.Text;
        if (_seen.TryGetValue(name, out var before) && !RowMaker.IsCount(entry))
        {
            Twice(row, before, said);
            return;
        }

        _seen[name] = (row, said);
        _entries.Add(entry);
        Count(row, values, kind.IsList ? 1 : Things(entry.Key.Text));
    }

    private void Leave(SheetRow row)
    {
        Left++;
        LeftRows.Add(row);
    }

    private void Count(SheetRow row, Dictionary<string, YamlScalar> values, int things)
    {
        foreach (var tally in _tallies)
            tally.Count(row, values.GetValueOrDefault(tally.Column.Field!.Name)?.Text, things);
    }

    private static string Said(Dictionary<string, YamlScalar> values) => string.Join('\n', values.Select(pair => $"{pair.Key}: {pair.Value.Text}"));

    private void Twice(SheetRow row, (SheetRow Row, string Said) before, string said)
    {
        if (before.Said == said)
        {
            PassedOver++;
            slips.Ask(SheetCodes.RowTwice, row.At, ($"row {row.Number} says the same as row {before.Row.Number}", "each thing in one row", "taken once; take one of the two out"));
            return;
        }

        Leave(row);
        var one = before.Said.Split('\n').Except(said.Split('\n'));
        var other = said.Split('\n').Except(before.Said.Split('\n'));
        slips.Refuse(
            SheetCodes.RowTwice,
            row.At,
            ($"row {row.Number} speaks of the same {kind.Noun} as row {before.Row.Number}: '{Words.Short(string.Join(", ", other))}' here, '{Words.Short(string.Join(", ", one))}' there", $"each {kind.Noun} in one row", "see which of the two is right, and take the other out"));
    }

    private static int Things(string key)
    {
        var ends = key.Split("..", StringSplitOptions.TrimEntries);
        return ends.Length == 2 && NameRange.Names(ends[0], ends[1]) is { } names ? names.Count : RowMaker.CountOf(key);
    }
}

using Headroom.Domain.Jobs;
using Headroom.Domain.Shown;
using Headroom.Domain.Tables;
using Headroom.JobFiles.Sheets;

namespace Headroom.JobFiles.Amending;

/// <summary>Sets an edited table beside what the job says, and gathers what differs.</summary>
/// <param name="job">The job.</param>
/// <param name="slips">Takes the findings.</param>
/// <param name="takeOut">The things whose rows are gone on purpose.</param>
internal sealed class AmendRows(Job job, SheetSlips slips, IReadOnlyList<string> takeOut)
{
    private const int MostNamed = 8;
    private const string Patching = "patching";

    private readonly Dictionary<string, SheetCell> _seen = [];

    /// <summary>What was changed.</summary>
    public List<AmendRow> Rows { get; } = [];

    /// <summary>Reads one table.</summary>
    public void Read(BackTable edited)
    {
        var designs = edited.Name == Patching ? Designs(edited) : [];
        var known = edited.Name switch
        {
            "drops" => JobTables.Drops(job, ShownUnits.Metric),
            "endpoints" => JobTables.Endpoints(job),
            _ => new BookTable(Patching, JobTables.Patching(new Design("", null, [], [], [], null, [], [], Domain.Findings.Place.None)).Columns, [.. designs.SelectMany(design => JobTables.Patching(design).Rows)]),
        };
        if (Columns(edited, known) is not { } columns)
            return;
        var before = known.Rows.ToDictionary(row => Key(known, row));
        var numbers = SheetNumbers.Find(edited.Rows.SelectMany(row => row.Where((cell, i) => cell.Number is null && i < columns.Length && columns[i] is { Column.Sort: CellSort.Number }).Select(cell => cell.Cell.Text)), null, ';');
        var readers = columns.Select(column => column is { } one ? new AmendValues(one.Column, one.Unit, numbers, slips) : null).ToArray();
        foreach (var row in edited.Rows)
            ReadRow(row, known, (columns, readers, before));
        Gone((edited, known), before.Keys.Where(key => !_seen.ContainsKey(key)).ToList());
        _seen.Clear();
    }

    private static string Key(BookTable table, IReadOnlyList<object?> row) => table.Name == Patching ? $"{row[0]}\n{row[1]}" : (string)row[0]!;

    private void ReadRow(IReadOnlyList<BackCell> row, BookTable known, ((BookColumn Column, string? Unit)?[] Columns, AmendValues?[] Readers, Dictionary<string, IReadOnlyList<object?>> Before) read)
    {
        BackCell? At(int column) => Array.FindIndex(read.Columns, one => one?.Column == known.Columns[column]) is >= 0 and var at && at < row.Count ? row[at] : null;
        var keys = known.Name == Patching ? 2 : 1;
        if (At(keys - 1) is not { Cell.Text.Length: > 0 } name || (keys == 2 && At(0) is not { Cell.Text.Length: > 0 }))
        {
            slips.Refuse(SheetCodes.NoKey, row[0].Cell.At, ($"the row of {row[0].Cell.Name} does not say which thing it is about", $"{Words.Or([.. known.Columns.Take(keys).Select(column => column.Name)])} in every row", "write it, or take the row out"));
            return;
        }

        var key = keys == 2 ? $"{At(0)!.Cell.Text}\n{name.Cell.Text}" : name.Cell.Text;
        if (!_seen.TryAdd(key, name.Cell))
        {
            slips.Refuse(SheetCodes.RowTwice, name.Cell.At, ($"{name.Cell.Name} names {Words.Short(name.Cell.Text)} a second time (first in {_seen[key].Name})", "each thing in one row", "see which of the two is right, and take the other out"));
            return;
        }

        var before = read.Before.GetValueOrDefault(key);
        var amended = new AmendRow(known, keys == 2 ? At(0)!.Cell.Text : null, name.Cell.Text, before is null, name.Cell.At);
        for (var i = keys; i < known.Columns.Count; i++)
        {
            var at = Array.FindIndex(read.Columns, one => one?.Column == known.Columns[i]);
            if (at < 0 || at >= row.Count)
                continue;
            var after = read.Readers[at]!.Read(row[at], before?[i], out var changed);
            if (changed)
                amended.Cells.Add((known.Columns[i], Shown(before?[i], known.Columns[i]), after, row[at].Cell));
        }

        if (amended.IsNew || amended.Cells.Count > 0)
            Rows.Add(amended);
    }

    private static string Shown(object? value, BookColumn column) => value switch
    {
        null => "nothing",
        double number => Numbers.WithUnit(Numbers.Show(number), column.Unit ?? ""),
        _ => value.ToString()!,
    };

    private (BookColumn Column, string? Unit)?[]? Columns(BackTable edited, BookTable known)
    {
        var found = edited.Header.Select(cell =>
        {
            var heading = SheetHeading.Of(cell.Cell.Text);
            return known.Columns.FirstOrDefault(column => SheetHeading.PlainOf(column.Name) == heading.Plain) is { } column ? (column, heading.Unit) : ((BookColumn, string?)?)null;
        }).ToArray();
        foreach (var cell in edited.Header.Where((cell, i) => found[i] is null && cell.Cell.Text.Length > 0))
            slips.Ask(SheetCodes.UnknownColumn, cell.Cell.At, ($"the column {cell.Cell.Name} '{Words.Short(cell.Cell.Text)}' is taken for nothing", $"the columns {Words.Or([.. known.Columns.Select(column => column.Name)])}", "write the heading as it was, or leave it: nothing of it is lost here"));
        foreach (var twice in found.OfType<(BookColumn Column, string? Unit)>().GroupBy(one => one.Column).Where(group => group.Count() > 1))
            slips.Refuse(SheetCodes.ColumnTwice, edited.Header[0].Cell.At, ($"two columns are headed {twice.Key.Name}", "each heading once", "take one of them out"));
        foreach (var missing in known.Columns.Take(known.Name == Patching ? 2 : 1).Where(column => !found.Any(one => one?.Item1 == column)))
            slips.Refuse(SheetCodes.NoColumn, edited.Header[0].Cell.At, ($"no column is headed {missing.Name}", $"a table of {known.Name} has one", "write the heading as it was"));
        return slips.Stands ? null : found;
    }

    private List<Design> Designs(BackTable edited)
    {
        var whole = new List<Design>();
        var column = edited.Header.ToList().FindIndex(cell => SheetHeading.Of(cell.Cell.Text).Plain == "design");
        foreach (var cell in edited.Rows.Where(row => column >= 0 && column < row.Count).Select(row => row[column].Cell).DistinctBy(cell => cell.Text).Where(cell => cell.Text.Length > 0))
        {
            if (DesignLineage.Whole(job, cell.Text) is { } design)
                whole.Add(design);
            else
                slips.Refuse(SheetCodes.NoDesign, cell.At, ($"{cell.Name} names the design '{Words.Short(cell.Text)}'", job.Designs.Count == 0 ? "a design of the job, which has none" : Words.Or([.. job.Designs.Select(one => one.Id)]), "name one that the job has"));
        }

        return whole;
    }

    // A row may be gone because somebody sorted it out of sight; nothing is taken out of a job for that.
    private void Gone((BackTable Edited, BookTable Known) table, List<string> gone)
    {
        var at = table.Edited.Header[0].Cell;
        foreach (var key in gone.Where(key => takeOut.Contains(NameOf(key))))
            Rows.Add(TakenOut(table.Known, key, at));
        gone = gone.FindAll(key => !takeOut.Contains(NameOf(key)));
        if (gone.Count == 0 || slips.Stands)
            return;
        var names = gone.Select(NameOf).ToList();
        var told = string.Join(", ", names.Take(MostNamed)) + (names.Count > MostNamed ? $" and {names.Count - MostNamed} more" : "");
        slips.Ask(SheetCodes.RowGone, at.At, ($"{told} {(names.Count == 1 ? "has" : "have")} no row in {table.Edited.Name} any more", "a row for each thing of the job", "nothing is taken out; where it is meant, name it: --take-out NAME"));
    }

    private static string NameOf(string key) => key.Split('\n')[^1];

    // A cord that is taken out is one that is plugged in nowhere any more.
    private static AmendRow TakenOut(BookTable known, string key, SheetCell at)
    {
        var design = known.Name == Patching ? key.Split('\n')[0] : null;
        var row = new AmendRow(known, design, NameOf(key), IsNew: false, at.At) { IsGone = true };
        if (design is not null)
            row.Cells.AddRange(known.Columns.Where(column => column.Name is "unit" or "port").Select(column => (column, "", (string?)null, at)));
        return row;
    }

    /// <summary>Refuses what is named to be taken out and is in no table, or still has its row.</summary>
    /// <param name="file">The edited file.</param>
    public void RefuseWhatIsNotGone(string file)
    {
        if (slips.Stands)
            return;
        foreach (var name in takeOut.Where(name => !Rows.Exists(row => row.IsGone && row.Key == name)))
            slips.Refuse(SheetCodes.NotGone, new(file, 1, 1), ($"'{Words.Short(name)}' is to be taken out, and no row of it is gone", "a thing of the job that has no row in an edited table any more", "take its row out of the table, or leave it in the job"));
    }
}

using System.Globalization;
using Headroom.Desk.Shown;
using Headroom.Domain.Findings;
using Headroom.JobFiles.Changes;
using Microsoft.AspNetCore.Http;

namespace Headroom.Desk.Serving;

/// <summary>A part of a job as a table in a form: what is shown, what was typed, what that changes, and where slips belong.</summary>
internal static class TableForm
{
    private const int NewRows = 3;
    private const int MostNewRows = 60;

    /// <summary>Rows to be filled.</summary>
    public static IEnumerable<SurveyRow> Empty => Room(NewRows);

    /// <summary>The rows as they are written, with some to be filled.</summary>
    /// <param name="table">The table.</param>
    /// <param name="room">For how many rows there is to be room; null for a few.</param>
    public static List<SurveyRow> Rows(JobTable table, int? room = null) => [.. table.Rows.Select(row => new SurveyRow(row.Name, row.Cells, false) { IsPlain = row.IsPlain, From = row.From }), .. Room(Math.Clamp(room ?? NewRows, NewRows, MostNewRows))];

    private static IEnumerable<SurveyRow> Room(int count) => Enumerable.Repeat(new SurveyRow("", new Dictionary<string, string>(), true), count);

    /// <summary>What others saved, with what was typed here in its cells.</summary>
    public static List<SurveyRow> Over(JobTable theirs, List<FieldChange> mine)
    {
        var depth = theirs.Path.Count;
        var rows = new List<SurveyRow>();
        foreach (var row in theirs.Rows)
        {
            var cells = row.Cells.ToDictionary(cell => cell.Key, cell => cell.Value);
            foreach (var change in mine.Where(change => change.Path.Count == depth + 2 && change.Path[depth] == row.Name))
                cells[change.Path[^1]] = change.After ?? "";
            rows.Add(new(row.Name, cells, false) { IsPlain = row.IsPlain, From = row.From, Out = mine.Exists(change => change.Path.Count == depth + 1 && change.Path[depth] == row.Name && change.After is null or "none") });
        }

        foreach (var name in mine.Select(change => change.Path[depth]).Distinct().Where(name => rows.TrueForAll(row => row.Name != name)))
        {
            var cells = mine.Where(change => change.Path.Count == depth + 2 && change.Path[depth] == name && change.After is not null).ToDictionary(change => change.Path[^1], change => change.After!);
            var whole = mine.Find(change => change.Path.Count == depth + 1 && change.Path[depth] == name)?.After;
            rows.Add(new(name, whole is null ? cells : JobTable.CellsOf(whole), true));
        }

        return [.. rows, .. Empty];
    }

    /// <summary>The columns in which something stands, the usual ones, and those asked for, with commas between.</summary>
    public static List<JobColumn> Columns(JobTable table, IEnumerable<string> usual, string? also)
    {
        var used = table.Rows.SelectMany(row => row.Cells.Keys).Concat(usual).Concat((also ?? "").Split(',')).ToHashSet();
        return [.. table.Columns.Where(column => used.Contains(column.Key))];
    }

    /// <summary>The rows as they were sent.</summary>
    public static List<SurveyRow> Typed(IFormCollection form, JobTable table, IReadOnlyList<JobColumn> columns)
    {
        var written = table.Rows.ToDictionary(row => row.Name);
        var count = Math.Min(Answers.Number(form["rows"]) ?? 0, form.Count);
        var rows = new List<SurveyRow>();
        for (var at = 0; at < count; at++)
        {
            var row = $"r{at.ToString(CultureInfo.InvariantCulture)}.";
            var name = form[row + "name"].ToString().Trim();
            var before = written.GetValueOrDefault(name);
            var cells = columns.Where(column => form.ContainsKey(row + column.Key)).ToDictionary(column => column.Key, column => form[row + column.Key].ToString());
            rows.Add(new(name, cells, before is null) { IsPlain = before?.IsPlain ?? true, From = before?.From, Out = form[row + "out"] == "yes" });
        }

        return rows;
    }

    /// <summary>What differs from what is written; what cannot be written is a slip of its cell.</summary>
    public static (List<FieldChange> Changes, List<(SurveyRow Row, string Column, string Said)> Slips) Changes(IReadOnlyList<SurveyRow> rows, JobTable table)
    {
        var changes = new List<FieldChange>();
        var slips = new List<(SurveyRow, string, string)>();
        foreach (var row in rows)
        {
            var before = table.Rows.FirstOrDefault(one => one.Name == row.Name);
            if (row.Out && before is not null)
            {
                // What another design has is taken away by saying so.
                changes.Add(new([.. table.Path, row.Name], "", before.Under.Count > 0 || before.From is not null ? "none" : null));
                continue;
            }

            var filled = row.Cells.Where(cell => cell.Value.Trim().Length > 0).ToList();
            if (before is null && row.Name.Length == 0)
            {
                if (filled.Count > 0)
                    slips.Add((row, "", "give it a name"));
                continue;
            }

            if (before is { Under.Count: > 0 })
                slips.AddRange(row.Cells.Where(cell => cell.Value.Trim().Length == 0 && before.From is not null && before.Under.ContainsKey(cell.Key)).Select(cell => (row, cell.Key, "it is taken over; write another value, or change it where it comes from")));
            slips.AddRange(row.Cells.SelectMany(cell => FieldText.Of(cell.Value).Findings.Select(finding => (row, cell.Key, $"{finding.Given}; {finding.Advice}"))));
            if (before is null)
                changes.Add(new([.. table.Path, row.Name], null, FieldText.Of(filled).Value));
            else
                changes.AddRange(row.Cells.Select(cell => new FieldChange([.. table.Path, row.Name, cell.Key], Before(before, cell.Key), FieldText.Of(cell.Value).Value)).Where(change => change.Before != change.After));
        }

        return (changes, slips);
    }

    private static string? Before(JobRow row, string column) => row.Cells.GetValueOrDefault(column) is { Length: > 0 } text ? text : null;

    /// <summary>Findings at their cells, and those that belong to none.</summary>
    public static (List<(SurveyRow Row, string Column, string Said)> Cells, List<Finding> Loose) Placed(IReadOnlyList<Finding> findings, JobOutline outline, IReadOnlyList<string> at, List<SurveyRow> rows, List<JobColumn> columns)
    {
        var cells = new List<(SurveyRow, string, string)>();
        var loose = new List<Finding>();
        foreach (var finding in findings)
        {
            var path = outline.PathAt(finding.At);
            var depth = at.Count;
            var row = path.Count > depth && at.SequenceEqual(path.Take(depth)) ? rows.Find(one => one.Name == path[depth]) : null;
            var column = row is null ? "" : path.Count < depth + 2 ? Quoted(finding, row) : columns.Find(one => one.Key.Replace('-', ' ') == path[depth + 1].Replace('-', ' '))?.Key ?? Quoted(finding, row);
            if (row is not null)
                cells.Add((row, column, $"{finding.Given}; allowed: {finding.Allowed}; {finding.Advice}"));
            else
                loose.Add(finding);
        }

        return (cells, loose);
    }

    // A finding about a whole row that quotes what one of its cells says belongs to that cell.
    private static string Quoted(Finding finding, SurveyRow row) =>
        row.Cells.Where(cell => cell.Value.Length > 0 && finding.Given.Contains($"'{cell.Value.Trim()}'", StringComparison.Ordinal)).Select(cell => cell.Key).ToList() is [var only] ? only : "";

    /// <summary>The rows with what is wrong in them.</summary>
    public static List<SurveyRow> Marked(List<SurveyRow> rows, List<(SurveyRow Row, string Column, string Said)> slips) =>
        [.. rows.Select(row => row with { Wrong = slips.Where(slip => ReferenceEquals(slip.Row, row)).GroupBy(slip => slip.Column).ToDictionary(group => group.Key, group => string.Join(" ", group.Select(slip => slip.Said))) })];
}

using System.Globalization;
using Headroom.Desk.Pages;
using Headroom.Desk.Shown;
using Headroom.Desk.Work;
using Headroom.Domain.Findings;
using Headroom.JobFiles.Changes;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;

namespace Headroom.Desk.Serving;

/// <summary>The tables of the survey, edited in forms.</summary>
internal static class SurveyRoutes
{
    private const int NewRows = 3;

    // Columns that are shown even where nothing stands in them.
    private static readonly Dictionary<string, string[]> Usual = new()
    {
        ["drops"] = ["from", "to", "length", "cable"], ["endpoints"] = ["model", "drop", "near"], ["spaces"] = ["kind", "size", "background", "temperature"],
        ["listeners"] = ["in", "at", "limit"], ["racks"] = ["in", "height", "depth"], ["pathways"] = ["kind", "inside", "ambient"],
    };

    /// <summary>Makes them answerable.</summary>
    public static void Map(WebApplication app)
    {
        app.MapGet("/jobs/{id}/survey", (RequestDelegate)(http => Show(new Visit(http))));
        app.MapPost("/jobs/{id}/survey", (RequestDelegate)(http => Save(new Visit(http))));
    }

    private static string Part(HttpContext http) => http.Asked("part") is { } part && JobTable.Parts.Contains(part) ? part : JobTable.Parts[0];

    private static async Task Show(Visit visit)
    {
        if (await visit.Open().ConfigureAwait(false) is not { } open)
            return;
        var table = JobTable.Of(open.Text.Text, Part(visit.Http));
        var columns = Columns(table, visit.Http.Asked("also"));
        List<SurveyRow> rows = [.. table.Rows.Select(row => new SurveyRow(row.Name, row.Cells, false) { IsPlain = row.IsPlain }), .. Enumerable.Repeat(new SurveyRow("", new Dictionary<string, string>(), true), NewRows)];
        var notice = visit.Http.Asked("saved") is { } saved ? visit.Http.Asked("with") is { } with ? $"Saved as revision {saved}. Meanwhile somebody else saved too, and both are kept: {with}" : $"Saved as revision {saved}." : null;
        await Page(visit, open, (table, columns), rows, [], [], notice).ConfigureAwait(false);
    }

    private static async Task Save(Visit visit)
    {
        var form = await visit.Http.Request.ReadFormAsync(visit.Http.RequestAborted).ConfigureAwait(false);
        if (await visit.Base(form).ConfigureAwait(false) is not { } open)
            return;
        var table = JobTable.Of(open.Text.Text, Part(visit.Http));
        var named = form["columns"].ToString().Split('|');
        List<JobColumn> columns = [.. table.Columns.Where(column => named.Contains(column.Key))];
        var rows = Typed(form, table, columns);
        var (changes, slips) = Changes(rows, table);
        var text = slips.Count > 0 ? null : JobFieldEditor.Put(open.Text.Text, changes);
        if (text is not { Text: { } edited })
        {
            await Page(visit, open, (table, columns), Marked(rows, slips), [.. text?.Findings ?? []], [], null).ConfigureAwait(false);
            return;
        }

        var outcome = visit.Saving.Save(open, edited, visit.By);
        if (outcome.Number is { } number)
        {
            var with = outcome.Merged is { } merged ? $"&with={Uri.EscapeDataString(ChangeWords.Of(merged.Theirs))}" : "";
            await visit.Http.GoOn($"/jobs/{open.Stored.Id}/survey?part={Part(visit.Http)}&saved={number}{with}").ConfigureAwait(false);
            return;
        }

        var found = new JobOutline(outcome.Text ?? edited);
        var (atCells, loose) = Placed(outcome.Findings, found, rows, columns);
        if (outcome.Findings.Count > 0 || outcome.Merged is not { } clash || visit.Shelf.Open(open.Stored.Id) is not { } last)
        {
            await Page(visit, open, (table, columns), Marked(rows, atCells), loose, [], null).ConfigureAwait(false);
            return;
        }

        // From here on it is a change of what they saved, so that nothing else of theirs goes back to what it was.
        var theirs = JobTable.Of(last.Text.Text, Part(visit.Http));
        await Page(visit, last, (theirs, columns), Over(theirs, changes), [], clash.Conflicts, null).ConfigureAwait(false);
    }

    // What others saved, with what was typed here in its cells.
    private static List<SurveyRow> Over(JobTable theirs, List<FieldChange> mine)
    {
        var depth = theirs.Path.Count;
        var rows = new List<SurveyRow>();
        foreach (var row in theirs.Rows)
        {
            var cells = row.Cells.ToDictionary(cell => cell.Key, cell => cell.Value);
            foreach (var change in mine.Where(change => change.Path.Count == depth + 2 && change.Path[depth] == row.Name))
                cells[change.Path[^1]] = change.After ?? "";
            rows.Add(new(row.Name, cells, false) { IsPlain = row.IsPlain, Out = mine.Exists(change => change.Path.Count == depth + 1 && change.Path[depth] == row.Name && change.After is null) });
        }

        foreach (var name in mine.Select(change => change.Path[depth]).Distinct().Where(name => rows.TrueForAll(row => row.Name != name)))
        {
            var cells = mine.Where(change => change.Path.Count == depth + 2 && change.Path[depth] == name && change.After is not null).ToDictionary(change => change.Path[^1], change => change.After!);
            var whole = mine.Find(change => change.Path.Count == depth + 1 && change.Path[depth] == name)?.After;
            rows.Add(new(name, whole is null ? cells : JobTable.CellsOf(whole), true));
        }

        return [.. rows, .. Enumerable.Repeat(new SurveyRow("", new Dictionary<string, string>(), true), NewRows)];
    }

    private static Task Page(Visit visit, OpenJob open, (JobTable Table, List<JobColumn> Columns) part, IReadOnlyList<SurveyRow> rows, List<Finding> loose, IReadOnlyList<(FieldChange, FieldChange)> clash, string? notice)
    {
        var refused = loose.Count > 0 || clash.Count > 0 || rows.Any(row => row.Wrong.Count > 0);
        return visit.Http.Page<SurveyPage>(
            new Dictionary<string, object?>
            {
                ["Head"] = visit.Head(open, "survey", visit.Study(open)), ["Part"] = Part(visit.Http), ["Columns"] = part.Columns, ["More"] = part.Table.Columns.Except(part.Columns).ToList(),
                ["Rows"] = rows, ["Loose"] = loose, ["Clash"] = clash, ["Notice"] = notice,
            },
            refused ? clash.Count > 0 ? StatusCodes.Status409Conflict : StatusCodes.Status422UnprocessableEntity : StatusCodes.Status200OK);
    }

    private static List<JobColumn> Columns(JobTable table, string? also)
    {
        var used = table.Rows.SelectMany(row => row.Cells.Keys).Concat(Usual[table.Path[^1]]).Append(also ?? "").ToHashSet();
        return [.. table.Columns.Where(column => used.Contains(column.Key))];
    }

    private static List<SurveyRow> Typed(IFormCollection form, JobTable table, IReadOnlyList<JobColumn> columns)
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
            rows.Add(new(name, cells, before is null) { IsPlain = before?.IsPlain ?? true, Out = form[row + "out"] == "yes" });
        }

        return rows;
    }

    // What differs from what is written; what cannot be written is a slip of its cell.
    private static (List<FieldChange> Changes, List<(SurveyRow Row, string Column, string Said)> Slips) Changes(IReadOnlyList<SurveyRow> rows, JobTable table)
    {
        var changes = new List<FieldChange>();
        var slips = new List<(SurveyRow, string, string)>();
        foreach (var row in rows)
        {
            var before = table.Rows.FirstOrDefault(one => one.Name == row.Name);
            if (row.Out && before is not null)
            {
                changes.Add(new([.. table.Path, row.Name], "", null));
                continue;
            }

            var filled = row.Cells.Where(cell => cell.Value.Trim().Length > 0).ToList();
            if (before is null && row.Name.Length == 0)
            {
                if (filled.Count > 0)
                    slips.Add((row, "", "give it a name"));
                continue;
            }

            slips.AddRange(row.Cells.SelectMany(cell => FieldText.Of(cell.Value).Findings.Select(finding => (row, cell.Key, $"{finding.Given}; {finding.Advice}"))));
            if (before is null)
                changes.Add(new([.. table.Path, row.Name], null, FieldText.Of(filled).Value));
            else
                changes.AddRange(row.Cells.Select(cell => new FieldChange([.. table.Path, row.Name, cell.Key], Before(before, cell.Key), FieldText.Of(cell.Value).Value)).Where(change => change.Before != change.After));
        }

        return (changes, slips);
    }

    private static string? Before(JobRow row, string column) => row.Cells.GetValueOrDefault(column) is { Length: > 0 } text ? text : null;

    private static (List<(SurveyRow Row, string Column, string Said)> Cells, List<Finding> Loose) Placed(IReadOnlyList<Finding> findings, JobOutline outline, List<SurveyRow> rows, List<JobColumn> columns)
    {
        var cells = new List<(SurveyRow, string, string)>();
        var loose = new List<Finding>();
        foreach (var finding in findings)
        {
            var path = outline.PathAt(finding.At);
            var row = path.Count > 2 && path[0] == "survey" ? rows.Find(one => one.Name == path[2]) : null;
            var column = row is null || path.Count < 4 ? "" : columns.Find(one => one.Key.Replace('-', ' ') == path[3].Replace('-', ' '))?.Key ?? "";
            if (row is not null)
                cells.Add((row, column, $"{finding.Given}; allowed: {finding.Allowed}; {finding.Advice}"));
            else
                loose.Add(finding);
        }

        return (cells, loose);
    }

    private static List<SurveyRow> Marked(List<SurveyRow> rows, List<(SurveyRow Row, string Column, string Said)> slips) =>
        [.. rows.Select(row => row with { Wrong = slips.Where(slip => ReferenceEquals(slip.Row, row)).GroupBy(slip => slip.Column).ToDictionary(group => group.Key, group => string.Join(" ", group.Select(slip => slip.Said))) })];
}

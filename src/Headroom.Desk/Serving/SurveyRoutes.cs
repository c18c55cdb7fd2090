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
        var columns = TableForm.Columns(table, Usual[table.Path[^1]], visit.Http.Asked("also"));
        var rows = TableForm.Rows(table, Answers.Number(visit.Http.Asked("rows")));
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
        var rows = TableForm.Typed(form, table, columns);
        var (changes, slips) = TableForm.Changes(rows, table);
        var text = slips.Count > 0 ? null : JobFieldEditor.Put(open.Text.Text, changes);
        if (text is not { Text: { } edited })
        {
            await Page(visit, open, (table, columns), TableForm.Marked(rows, slips), [.. text?.Findings ?? []], [], null).ConfigureAwait(false);
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
        var (atCells, loose) = TableForm.Placed(outcome.Findings, found, table.Path, rows, columns);
        if (outcome.Findings.Count > 0 || outcome.Merged is not { } clash || visit.Shelf.Open(open.Stored.Id) is not { } last)
        {
            await Page(visit, open, (table, columns), TableForm.Marked(rows, atCells), loose, [], null).ConfigureAwait(false);
            return;
        }

        // From here on it is a change of what they saved, so that nothing else of theirs goes back to what it was.
        var theirs = JobTable.Of(last.Text.Text, Part(visit.Http));
        await Page(visit, last, (theirs, columns), TableForm.Over(theirs, changes), [], clash.Conflicts, null).ConfigureAwait(false);
    }

    private static Task Page(Visit visit, OpenJob open, (JobTable Table, List<JobColumn> Columns) part, IReadOnlyList<SurveyRow> rows, List<Finding> loose, IReadOnlyList<(FieldChange, FieldChange)> clash, string? notice)
    {
        var refused = loose.Count > 0 || clash.Count > 0 || rows.Any(row => row.Wrong.Count > 0);
        return visit.Http.Page<SurveyPage>(
            new Dictionary<string, object?>
            {
                ["Head"] = visit.Head(open, "survey", visit.Study(open)), ["Part"] = Part(visit.Http), ["Columns"] = part.Columns, ["More"] = part.Table.Columns.Except(part.Columns).ToList(),
                ["Rows"] = rows, ["Lists"] = KnownNames.Of(open, Part(visit.Http)), ["Also"] = visit.Http.Asked("also") ?? "", ["Room"] = Answers.Number(visit.Http.Asked("rows")) ?? 0, ["Loose"] = loose, ["Clash"] = clash, ["Notice"] = notice,
            },
            refused ? clash.Count > 0 ? StatusCodes.Status409Conflict : StatusCodes.Status422UnprocessableEntity : StatusCodes.Status200OK);
    }
}

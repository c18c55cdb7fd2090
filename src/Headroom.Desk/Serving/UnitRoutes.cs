using Headroom.Desk.Pages;
using Headroom.Desk.Shown;
using Headroom.Desk.Work;
using Headroom.Domain.Findings;
using Headroom.JobFiles.Changes;
using Headroom.JobFiles.Editing;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.Extensions.Primitives;

namespace Headroom.Desk.Serving;

/// <summary>The units of a design, put in, exchanged and taken out; new designs, and which one is chosen.</summary>
internal static class UnitRoutes
{
    private static readonly Dictionary<string, string[]> Usual = new()
    {
        ["switches"] = ["model", "supply", "in", "unit", "fed-by"], ["injectors"] = ["model", "in", "fed-by", "from"], ["midspans"] = ["model", "in", "fed-by", "from"],
        ["standby"] = ["model", "in", "unit", "batteries"], ["fittings"] = ["kind", "in", "unit", "height", "places"], [JobTable.Links] = ["from", "to", "media", "module", "drop"],
    };

    /// <summary>Makes them answerable.</summary>
    public static void Map(WebApplication app)
    {
        app.MapGet("/jobs/{id}/units", (RequestDelegate)(http => Show(new Visit(http))));
        app.MapPost("/jobs/{id}/units", (RequestDelegate)(http => Save(new Visit(http))));
        app.MapPost("/jobs/{id}/design", (RequestDelegate)(http => Begin(new Visit(http))));
        app.MapPost("/jobs/{id}/choose", (RequestDelegate)(http => Choose(new Visit(http))));
    }

    private static string Part(HttpContext http) => http.Asked("part") is { } part && JobTable.UnitParts.Contains(part) ? part : JobTable.UnitParts[0];

    // The design named, else the one studied, else the first written.
    private static string? Design(Visit visit, OpenJob open) =>
        visit.Http.Asked("design") is { } asked && open.Read?.Designs.Any(one => one.Id == asked) == true ? asked : visit.Study(open)?.Id ?? open.Read?.Designs.Select(one => one.Id).FirstOrDefault();

    private static async Task Show(Visit visit)
    {
        if (await visit.Open().ConfigureAwait(false) is not { } open)
            return;
        var notice = visit.Http.Asked("saved") is { } saved ? $"Saved as revision {saved}." : null;
        await Page(visit, open, Model(visit, open) is { } model ? model with { Notice = notice } : null, null).ConfigureAwait(false);
    }

    private static TableModel? Model(Visit visit, OpenJob open)
    {
        if (Design(visit, open) is not { } design)
            return null;
        var table = JobTable.Of(open.Text.Text, design, Part(visit.Http));
        var columns = TableForm.Columns(table, Usual[Part(visit.Http)], visit.Http.Asked("also"));
        return new(columns, [.. table.Columns.Except(columns)], TableForm.Rows(table))
        {
            Gone = table.Gone, AllFrom = table.AllFrom, Lists = KnownNames.Of(open, Part(visit.Http), design),
        };
    }

    private static Task Page(Visit visit, OpenJob open, TableModel? model, string? refused)
    {
        var studied = visit.Study(open);
        var head = visit.Head(open, "units", studied);
        var design = Design(visit, open) ?? "";
        return visit.Http.Page<UnitsPage>(
            new Dictionary<string, object?>
            {
                ["Head"] = head with { Design = design }, ["Part"] = Part(visit.Http), ["Also"] = visit.Http.Asked("also") ?? "", ["Model"] = model, ["Chosen"] = open.Read?.Chosen, ["Refused"] = refused,
                ["Like"] = open.Read?.Designs.FirstOrDefault(one => one.Id == design)?.Like, ["Switches"] = KnownNames.Of(open, "switches").GetValueOrDefault("model") ?? [],
            },
            model is { Clash.Count: > 0 } ? StatusCodes.Status409Conflict : refused is not null || model is { IsRefused: true } ? StatusCodes.Status422UnprocessableEntity : StatusCodes.Status200OK);
    }

    private static async Task Save(Visit visit)
    {
        var form = await visit.Http.Request.ReadFormAsync(visit.Http.RequestAborted).ConfigureAwait(false);
        if (await visit.Base(form).ConfigureAwait(false) is not { } open)
            return;
        if (Model(visit, open) is not { } model || Design(visit, open) is not { } design)
        {
            await visit.Http.Nothing("such design of the job").ConfigureAwait(false);
            return;
        }

        var part = Part(visit.Http);
        var table = JobTable.Of(open.Text.Text, design, part);
        var named = form["columns"].ToString().Split('|');
        List<JobColumn> columns = [.. table.Columns.Where(column => named.Contains(column.Key))];
        var rows = TableForm.Typed(form, table, columns);
        var (changes, slips) = part == JobTable.Links ? LinkChanges(rows, table) : TableForm.Changes(rows, table);
        changes.AddRange(table.Gone.Where(name => form["back"].Contains(name)).Select(name => new FieldChange(part == JobTable.Links ? table.Path : [.. table.Path, name], "none", null)));
        if (part != JobTable.Links)
            changes.AddRange(UnitLoosening.Of(open, design, [.. rows.Where(row => row.Out).Select(row => row.Name)]));
        model = model with { Columns = columns, More = [.. table.Columns.Except(columns)] };
        var edit = slips.Count > 0 ? null : JobFieldEditor.Put(open.Text.Text, changes);
        if (edit is not { Text: { } edited })
        {
            await Page(visit, open, model with { Rows = TableForm.Marked(rows, slips), Loose = [.. edit?.Findings ?? []] }, null).ConfigureAwait(false);
            return;
        }

        var outcome = visit.Saving.Save(open, edited, visit.By);
        if (outcome.Number is { } number)
        {
            await visit.Http.GoOn($"/jobs/{open.Stored.Id}/units?design={Uri.EscapeDataString(design)}&part={part}&saved={number}").ConfigureAwait(false);
            return;
        }

        var (atCells, loose) = TableForm.Placed(outcome.Findings, new JobOutline(outcome.Text ?? edited), table.Path, rows, columns);
        if (outcome.Findings.Count > 0 || outcome.Merged is not { } clash || visit.Shelf.Open(open.Stored.Id) is not { } last)
        {
            await Page(visit, open, model with { Rows = TableForm.Marked(rows, atCells), Loose = loose }, null).ConfigureAwait(false);
            return;
        }

        var theirs = JobTable.Of(last.Text.Text, design, part);
        await Page(visit, last, model with { Rows = part == JobTable.Links ? rows : TableForm.Over(theirs, changes), Clash = clash.Conflicts }, null).ConfigureAwait(false);
    }

    // Links are one value: when one of them is changed, all are written.
    private static (List<FieldChange> Changes, List<(SurveyRow Row, string Column, string Said)> Slips) LinkChanges(List<SurveyRow> rows, JobTable table)
    {
        var slips = new List<(SurveyRow, string, string)>();
        var links = new List<string>();
        var isOther = false;
        foreach (var row in rows)
        {
            slips.AddRange(row.Cells.SelectMany(cell => FieldText.Of(cell.Value).Findings.Select(finding => (row, cell.Key, $"{finding.Given}; {finding.Advice}"))));
            var before = table.Rows.FirstOrDefault(one => one.Name == row.Name)?.Cells ?? new Dictionary<string, string>();
            var was = Link(table, key => before.GetValueOrDefault(key));
            var now = row.Out ? null : Link(table, key => row.Cells.TryGetValue(key, out var typed) ? typed : before.GetValueOrDefault(key));
            isOther |= was != now;
            if (now is not null)
                links.Add(now);
        }

        return (slips.Count > 0 || !isOther ? [] : [new(table.Path, "", links.Count > 0 ? $"[{string.Join(", ", links)}]" : "none")], slips);
    }

    private static string? Link(JobTable table, Func<string, string?> cell) =>
        FieldText.Of(table.Columns.Select(column => KeyValuePair.Create(column.Key, cell(column.Key) ?? ""))).Value is { } link && link != "{}" ? link : null;

    private static async Task Begin(Visit visit)
    {
        var form = await visit.Http.Request.ReadFormAsync(visit.Http.RequestAborted).ConfigureAwait(false);
        if (await visit.Base(form).ConfigureAwait(false) is not { } open)
            return;
        var (name, like, model) = (form["name"].ToString().Trim(), form["like"].ToString(), form["model"].ToString().Trim());
        if (name.Length == 0 || open.Read?.Designs.Any(one => one.Id == name) == true)
        {
            await Page(visit, open, Model(visit, open), name.Length == 0 ? "The new design has no name." : $"The job has a design '{name}' already; give it another name.").ConfigureAwait(false);
            return;
        }

        var yaml = like.Length > 0 ? $"like: {YamlWriter.Text(like)}\n" : $"switches:\n  sw-1: {{model: {YamlWriter.Text(model)}}}\n";
        var edit = like.Length == 0 && model.Length == 0 ? new Edit(null, [Refused("no design to start from", "a design, or a model for its first switch", "choose one of the two")]) : JobFileEditor.PutDesign(open.Text.Text, name, yaml);
        await Put(visit, open, edit, $"design {name}{(like.Length > 0 ? $", like {like}" : "")}", $"/jobs/{open.Stored.Id}/units?design={Uri.EscapeDataString(name)}").ConfigureAwait(false);
    }

    private static async Task Choose(Visit visit)
    {
        var form = await visit.Http.Request.ReadFormAsync(visit.Http.RequestAborted).ConfigureAwait(false);
        if (await visit.Base(form).ConfigureAwait(false) is not { } open)
            return;
        var design = StringValues.IsNullOrEmpty(form["design"]) ? "" : form["design"].ToString();
        var edit = JobFieldEditor.Put(open.Text.Text, [new(["chosen"], open.Read?.Chosen, FieldText.Of(design).Value)]);
        await Put(visit, open, edit, $"design {design} is chosen", $"/jobs/{open.Stored.Id}/units?design={Uri.EscapeDataString(design)}").ConfigureAwait(false);
    }

    private static async Task Put(Visit visit, OpenJob open, Edit edit, string what, string then)
    {
        var outcome = edit.Text is null ? null : visit.Saving.Save(open, edit.Text, visit.By, what);
        if (outcome?.Number is { } number)
        {
            await visit.Http.GoOn($"{then}&saved={number}").ConfigureAwait(false);
            return;
        }

        var refused = (outcome?.Findings ?? edit.Findings) is [var first, ..] ? $"{first.Given}; allowed: {first.Allowed}; {first.Advice}." : "Somebody else changed the same meanwhile; look at the job, then try again.";
        await Page(visit, open, Model(visit, open), refused).ConfigureAwait(false);
    }

    private static Finding Refused(string given, string allowed, string advice) => new(Severity.Error, "DESK", Place.None, given, allowed, advice);
}

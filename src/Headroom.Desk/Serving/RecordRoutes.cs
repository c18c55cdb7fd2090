using System.Globalization;
using Headroom.Desk.Pages;
using Headroom.Desk.Shown;
using Headroom.Desk.Work;
using Headroom.Domain.Findings;
using Headroom.Domain.Shown;
using Headroom.JobFiles.Changes;
using Headroom.JobFiles.Editing;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;

namespace Headroom.Desk.Serving;

/// <summary>Readings and overrulings: shown, and written into the job.</summary>
internal static class RecordRoutes
{
    /// <summary>Makes them answerable.</summary>
    public static void Map(WebApplication app)
    {
        app.MapGet("/jobs/{id}/readings", (RequestDelegate)(http => Show(new Visit(http))));
        app.MapPost("/jobs/{id}/readings", (RequestDelegate)(http => Read(new Visit(http))));
        app.MapPost("/jobs/{id}/overrule", (RequestDelegate)(http => Overrule(new Visit(http))));
    }

    private static async Task Show(Visit visit)
    {
        if (await visit.Open().ConfigureAwait(false) is { } open)
            await Page(visit, open, new Dictionary<string, string> { ["on"] = visit.Shelf.Today.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture) }, []).ConfigureAwait(false);
    }

    private static Task Page(Visit visit, OpenJob open, IReadOnlyDictionary<string, string> typed, IReadOnlyList<Finding> findings)
    {
        var studied = visit.Study(open);
        var told = studied?.Ask(one => (List<string>)
        [
            .. one.Ledger.Entries.SelectMany(entry => entry.Measured).DistinctBy(comparison => (comparison.Reading, comparison.Finding)).Select(comparison => EntryInWords.Tell(comparison, ShownUnits.Metric)),
            .. one.Ledger.LooseReadings.Select(loose => $"{EntryInWords.Tell(loose.Reading, ShownUnits.Metric)}: {loose.Why}"),
        ]);
        return visit.Http.Page<ReadingsPage>(
            new Dictionary<string, object?> { ["Head"] = visit.Head(open, "readings", studied), ["Told"] = told ?? [], ["Columns"] = JobTable.ReadingColumns, ["Typed"] = typed, ["Findings"] = findings },
            findings.Count == 0 ? StatusCodes.Status200OK : StatusCodes.Status422UnprocessableEntity);
    }

    private static async Task Read(Visit visit)
    {
        var form = await visit.Http.Request.ReadFormAsync(visit.Http.RequestAborted).ConfigureAwait(false);
        if (await visit.Base(form).ConfigureAwait(false) is not { } open)
            return;
        var typed = JobTable.ReadingColumns.ToDictionary(column => column.Key, column => form[column.Key].ToString());
        var findings = Put(visit, open, ["readings", FieldChange.Item], null, typed);
        await (findings.Count > 0 ? Page(visit, open, typed, findings) : visit.Http.GoOn($"/jobs/{open.Stored.Id}/readings?design={Uri.EscapeDataString(visit.Http.Asked("design") ?? "")}")).ConfigureAwait(false);
    }

    private static async Task Overrule(Visit visit)
    {
        var form = await visit.Http.Request.ReadFormAsync(visit.Http.RequestAborted).ConfigureAwait(false);
        if (await visit.Base(form).ConfigureAwait(false) is not { } open)
            return;
        var (entry, because, design) = (form["entry"].ToString(), form["because"].ToString(), form["design"].ToString());
        var studied = visit.Shelf.Study(open, design.Length == 0 ? null : design);
        if (studied?.Ask(one => EntryModel.Of(one.Ledger, entry)) is not { Line: not null } model)
        {
            await visit.Http.Nothing("such entry in this design").ConfigureAwait(false);
            return;
        }

        var before = open.Read!.Overrulings.FirstOrDefault(one => one.Entry == entry);
        var was = before is null ? null : JobChanges.Between("{}", open.Text.Text)!.Where(change => change.Path[0] == "overrulings").SelectMany(change => change.Path.Count > 1 ? [change.After!] : JobTable.ItemsOf(change.After!)).FirstOrDefault(item => item.Contains($"entry: {YamlWriter.Text(entry)}", StringComparison.Ordinal));
        var typed = new Dictionary<string, string> { ["entry"] = entry, ["because"] = because, ["by"] = visit.By, ["on"] = visit.Shelf.Today.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture) };
        IReadOnlyList<Finding> findings = because.Trim().Length == 0
            ? [new(Severity.Error, "DESK", Place.None, "no reason", "a reason that others understand", "write why the verdict does not hold")]
            : Put(visit, open, ["overrulings", FieldChange.Item], was, typed);
        if (findings.Count == 0)
            await visit.Http.GoOn($"/jobs/{open.Stored.Id}?design={Uri.EscapeDataString(studied.Id)}").ConfigureAwait(false);
        else
            await visit.Http.Page<EntryPage>(new Dictionary<string, object?> { ["Head"] = visit.Head(open, "", studied), ["Model"] = model, ["Because"] = because, ["Findings"] = findings }, StatusCodes.Status422UnprocessableEntity).ConfigureAwait(false);
    }

    // What is wrong; empty when it is saved.
    private static IReadOnlyList<Finding> Put(Visit visit, OpenJob open, IReadOnlyList<string> path, string? before, Dictionary<string, string> typed)
    {
        var item = FieldText.Of(typed);
        if (item.Findings.Count > 0)
            return item.Findings;
        var edit = JobFieldEditor.Put(open.Text.Text, [new(path, before, item.Value)]);
        if (edit.Text is null)
            return edit.Findings;
        var outcome = visit.Saving.Save(open, edit.Text, visit.By);
        return outcome.Number is not null || outcome.Findings.Count > 0 ? outcome.Findings
            : [new(Severity.Error, "DESK", Place.None, "somebody else changed the same meanwhile", "one of the two", "look at what they wrote, then try again")];
    }
}

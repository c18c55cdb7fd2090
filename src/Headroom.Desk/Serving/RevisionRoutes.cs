using Headroom.Desk.Pages;
using Headroom.Desk.Shown;
using Headroom.JobFiles.Changes;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;

namespace Headroom.Desk.Serving;

/// <summary>Revisions: listed, compared two by two, gone back to.</summary>
internal static class RevisionRoutes
{
    /// <summary>Makes them answerable.</summary>
    public static void Map(WebApplication app)
    {
        app.MapGet("/jobs/{id}/revisions", (RequestDelegate)(http => Show(new Visit(http), null)));
        app.MapPost("/jobs/{id}/undo", (RequestDelegate)(http => Undo(new Visit(http))));
    }

    private static async Task Show(Visit visit, string? notice, int status = StatusCodes.Status200OK)
    {
        if (visit.Shelf.Open(visit.JobId) is not { } open)
        {
            await visit.Http.Nothing("such job").ConfigureAwait(false);
            return;
        }

        var page = new Dictionary<string, object?> { ["Head"] = visit.Head(open, "revisions", visit.Study(open)), ["Revisions"] = visit.Store.Revisions(open.Stored.Id), ["Notice"] = notice };
        if (Answers.Number(visit.Http.Asked("a")) is { } first && Answers.Number(visit.Http.Asked("b")) is { } second
            && visit.Store.Read(open.Stored.Id, first) is { } before && visit.Store.Read(open.Stored.Id, second) is { } after)
        {
            page["First"] = first;
            page["Second"] = second;
            page["Changes"] = JobChanges.Between(before.Text, after.Text);
            // The last revision is worked out with the models of today: what was kept stands beside what the study says now.
            var isNow = second == open.Stored.Head;
            page["SecondIsNow"] = isNow;
            page["Ledgers"] = Differences(
                visit.Saving.Kept(open.Stored.Id, first, first == open.Stored.Head),
                isNow ? visit.Shelf.Study(open)?.Ask(one => one.Shown.Kept) : visit.Saving.Kept(open.Stored.Id, second, isLast: false));
        }

        await visit.Http.Page<RevisionsPage>(page, status).ConfigureAwait(false);
    }

    private static List<(string Id, string Before, string After)> Differences(KeptLedger? before, KeptLedger? after)
    {
        var first = (before?.Rows ?? []).DistinctBy(row => row.Id).ToDictionary(row => row.Id, Told);
        var second = (after?.Rows ?? []).DistinctBy(row => row.Id).ToDictionary(row => row.Id, Told);
        return [.. second.Keys.Concat(first.Keys.Where(id => !second.ContainsKey(id)))
            .Select(id => (id, first.GetValueOrDefault(id, "not there"), second.GetValueOrDefault(id, "not there")))
            .Where(row => row.Item2 != row.Item3)];
    }

    private static string Told(KeptRow row) => row.Question is { } question ? $"{row.Verdict}: {question}" : $"{row.Verdict}: asked {row.Asked}, there is {row.There}, left {row.Left}";

    private static async Task Undo(Visit visit)
    {
        var form = await visit.Http.Request.ReadFormAsync(visit.Http.RequestAborted).ConfigureAwait(false);
        if (await visit.Base(form).ConfigureAwait(false) is not { } open)
            return;
        if (Answers.Number(form["to"]) is not { } to || visit.Store.Read(open.Stored.Id, to) is not { } old)
        {
            await Show(visit, $"There is no revision '{form["to"]}'.", StatusCodes.Status422UnprocessableEntity).ConfigureAwait(false);
            return;
        }

        var outcome = visit.Saving.Save(open with { Text = open.Text with { Files = old.Files } }, old.Text, visit.By, $"back to revision {to}");
        await (outcome.Number is null
            ? Show(visit, outcome.Findings.Count > 0 ? $"Revision {to} does not hold together with the models of today: {outcome.Findings[0].Given}." : "Somebody else changed the job meanwhile; look at it, then try again.", StatusCodes.Status409Conflict)
            : visit.Http.GoOn($"/jobs/{open.Stored.Id}?saved={outcome.Number}")).ConfigureAwait(false);
    }
}

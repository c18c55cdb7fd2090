using System.Globalization;
using System.Text.Json;
using Headroom.Desk.Pages;
using Headroom.Desk.Shown;
using Headroom.Desk.Tasks;
using Headroom.Documents.Papers;
using Headroom.JobFiles.Editing;
using Headroom.Store;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.Extensions.DependencyInjection;

namespace Headroom.Desk.Serving;

/// <summary>Long work: papers, remedies, proposals; how far it is, stopped, and what it came to taken into the job.</summary>
internal static class WorkRoutes
{
    private static readonly TimeSpan Beat = TimeSpan.FromMilliseconds(500);

    // A connection that nobody ends by itself is ended: the page asks again.
    private static readonly TimeSpan Longest = TimeSpan.FromMinutes(10);

    private static readonly Dictionary<string, (string Kind, string About, string Button)> Searches = new()
    {
        ["remedies"] = ("remedies", "Changes that help what is short or tight: settings, models, places, cables and more. Each is studied with the whole ledger, so that what gets worse elsewhere is told too.", "Look for remedies"),
        ["proposals"] = ("plan", "The planner looks for the cheapest designs that keep every reserve: which switches, where, and what is patched where.", "Let the planner propose"),
        ["turning"] = ("turn", "At which value of a draw, a price, a count or a reserve another design becomes the cheapest. A design that stays right over a long way is one that need not be asked about again.", "Look where the answer changes"),
    };

    /// <summary>Makes them answerable.</summary>
    public static void Map(WebApplication app)
    {
        foreach (var path in Searches.Keys)
        {
            app.MapGet($"/jobs/{{id}}/{path}", (RequestDelegate)(http => Finds(new Visit(http), path, null)));
            app.MapPost($"/jobs/{{id}}/{path}", (RequestDelegate)(http => Begin(new Visit(http), path, Searches[path].Kind)));
        }

        app.MapGet("/jobs/{id}/papers", (RequestDelegate)(http => Papers(new Visit(http))));
        app.MapPost("/jobs/{id}/papers", (RequestDelegate)(http => Begin(new Visit(http), "papers", "papers")));
        app.MapGet("/jobs/{id}/papers/{paper:long}", (RequestDelegate)(http => Paper(new Visit(http))));
        app.MapGet("/tasks/{task:long}/events", (RequestDelegate)(http => Events(new Visit(http))));
        app.MapPost("/tasks/{task:long}/stop", (RequestDelegate)(http => Stop(new Visit(http))));
        app.MapPost("/tasks/{task:long}/take", (RequestDelegate)(http => Take(new Visit(http))));
    }

    /// <summary>Begins long work, and leads to the page that tells of it.</summary>
    public static async Task Begin(Visit visit, string path, string kind)
    {
        var form = await visit.Http.Request.ReadFormAsync(visit.Http.RequestAborted).ConfigureAwait(false);
        if (visit.Shelf.Open(visit.JobId) is not { } open)
        {
            await visit.Http.Nothing("such job").ConfigureAwait(false);
            return;
        }

        var design = form["design"].ToString() is { Length: > 0 } given ? given : null;
        var papers = form["paper"].OfType<string>().Where(id => PaperList.Find(id) is not null).ToList();
        if (open.Sound is null || (kind is not ("plan" or "turn" or "enquiry") && visit.Shelf.Study(open, design) is null))
        {
            await visit.Http.Refuse(StatusCodes.Status422UnprocessableEntity, "The job cannot be worked with as it is.", "See its ledger for why.", [.. open.Errors]).ConfigureAwait(false);
            return;
        }

        if (kind == "papers" && papers.Count == 0)
        {
            await visit.Http.Refuse(StatusCodes.Status422UnprocessableEntity, "No paper was chosen.", "Go back and tick at least one.").ConfigureAwait(false);
            return;
        }

        visit.Http.RequestServices.GetRequiredService<TaskRunner>().Ask(open, kind, new(design, papers), visit.By);
        await visit.Http.GoOn($"/jobs/{open.Stored.Id}/{path}{(design is null ? "" : $"?design={Uri.EscapeDataString(design)}")}").ConfigureAwait(false);
    }

    private static async Task Finds(Visit visit, string path, string? refused, int status = StatusCodes.Status200OK)
    {
        if (await visit.Open().ConfigureAwait(false) is not { } open)
            return;
        var (kind, about, button) = Searches[path];
        var task = visit.Store.LastTask(open.Stored.Id, kind);
        var result = task is null ? null : visit.Store.Result(task.Id);
        await visit.Http.Page<FindsPage>(
            new Dictionary<string, object?>
            {
                ["Head"] = visit.Head(open, path, visit.Study(open)), ["Path"] = path, ["About"] = about, ["Button"] = button, ["Task"] = Model(task), ["Finds"] = result is null ? null : KeptFinds.Read(result), ["Refused"] = refused,
            },
            status).ConfigureAwait(false);
    }

    private static async Task Papers(Visit visit)
    {
        if (await visit.Open().ConfigureAwait(false) is not { } open)
            return;
        var task = visit.Store.LastTask(open.Stored.Id, "papers");
        var said = task is not null && visit.Store.Result(task.Id) is { } result ? JsonSerializer.Deserialize<List<string>>(result) : null;
        await visit.Http.Page<PapersPage>(new Dictionary<string, object?>
        {
            ["Head"] = visit.Head(open, "papers", visit.Study(open)), ["Papers"] = PaperList.All, ["Kept"] = visit.Store.Papers(open.Stored.Id), ["Task"] = Model(task), ["Said"] = said ?? [],
        }).ConfigureAwait(false);
    }

    private static Task Paper(Visit visit) => visit.Store.Paper(visit.JobId, Number(visit, "paper")) is var (paper, bytes)
        ? visit.Http.Send(paper.Name, "application/pdf", bytes)
        : visit.Http.Nothing("such paper of the job");

    /// <summary>A task as pages show it; null for none.</summary>
    public static TaskModel? Model(StoredTask? task)
    {
        if (task is null)
            return null;
        var at = task.At.LocalDateTime.ToString("d MMM yyyy HH:mm", CultureInfo.InvariantCulture);
        return new(task.Id, task.Job, Said(task, $"asked by {task.By} on {at}, of revision {task.Revision}"), task.IsOver);
    }

    private static string Said(StoredTask task, string asked) => task.State switch
    {
        TaskState.Waiting => $"It waits for its turn; {asked}.",
        TaskState.Running => $"At work: {task.Told}; {asked}.",
        TaskState.Stopping => $"It is being stopped; {asked}.",
        TaskState.Done => $"Done; {asked}.",
        TaskState.Stopped => $"It was stopped; {asked}.",
        _ => $"It came to nothing: {task.Told}; {asked}.",
    };

    private static async Task Events(Visit visit)
    {
        var response = visit.Http.Response;
        response.ContentType = "text/event-stream";
        response.Headers.CacheControl = "no-store";
        var last = "";
        for (var waited = TimeSpan.Zero; waited < Longest; waited += Beat)
        {
            var task = Model(visit.Store.Task(Number(visit, "task")));
            var said = JsonSerializer.Serialize(new { told = task?.Said ?? "", over = task?.IsOver ?? true });
            if (said != last)
            {
                await response.WriteAsync($"data: {said}\n\n", visit.Http.RequestAborted).ConfigureAwait(false);
                await response.Body.FlushAsync(visit.Http.RequestAborted).ConfigureAwait(false);
            }

            if (task is null || task.IsOver)
                return;
            last = said;
            await Task.Delay(Beat, visit.Http.RequestAborted).ConfigureAwait(false);
        }
    }

    private static async Task Stop(Visit visit)
    {
        if (visit.Store.Task(Number(visit, "task")) is not { } task)
        {
            await visit.Http.Nothing("such task").ConfigureAwait(false);
            return;
        }

        visit.Store.Stop(task.Id);
        await visit.Http.GoOn($"/jobs/{task.Job}/{PathOf(task.Kind)}").ConfigureAwait(false);
    }

    private static async Task Take(Visit visit)
    {
        var form = await visit.Http.Request.ReadFormAsync(visit.Http.RequestAborted).ConfigureAwait(false);
        if (visit.Store.Task(Number(visit, "task")) is not { } task || visit.Store.Result(task.Id) is not { } result || KeptFinds.Read(result) is not { } finds
            || finds.Finds.ElementAtOrDefault(Answers.Number(form["number"]) ?? -1) is not { Design: { } design } || visit.Shelf.Open(task.Job, task.Revision) is not { } open)
        {
            await visit.Http.Nothing("such find").ConfigureAwait(false);
            return;
        }

        visit.Http.Request.RouteValues["id"] = task.Job;
        var name = form["name"].ToString().Trim();
        var refused = open.Read!.Designs.Any(one => one.Id == name) || visit.Shelf.Open(task.Job)!.Read!.Designs.Any(one => one.Id == name) ? $"The job has a design '{name}' already; give it another name." : null;
        if (refused is null)
        {
            var edit = JobFileEditor.PutDesign(open.Text.Text, name, design);
            var outcome = edit.Text is null ? null : visit.Saving.Save(open, edit.Text, visit.By, $"design {name}, from what was found");
            if (outcome?.Number is not null)
            {
                await visit.Http.GoOn($"/jobs/{task.Job}?design={Uri.EscapeDataString(name)}&saved={outcome.Number}").ConfigureAwait(false);
                return;
            }

            refused = (outcome?.Findings ?? edit.Findings) is [var first, ..] ? $"It was not put in: {first.Given}; {first.Advice}." : "Somebody else changed the same meanwhile; look at the job, then try again.";
        }

        await Finds(visit, PathOf(task.Kind), refused, StatusCodes.Status422UnprocessableEntity).ConfigureAwait(false);
    }

    private static string PathOf(string kind) => Searches.FirstOrDefault(search => search.Value.Kind == kind).Key ?? kind;

    private static long Number(Visit visit, string part) => long.Parse((string)visit.Http.Request.RouteValues[part]!, CultureInfo.InvariantCulture);
}

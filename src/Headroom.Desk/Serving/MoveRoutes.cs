using Headroom.Desk.Moving;
using Headroom.Desk.Pages;
using Headroom.Desk.Shown;
using Headroom.JobFiles.Changes;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;

namespace Headroom.Desk.Serving;

/// <summary>Drawings on which things are moved: rooms, switch faces, racks. Nothing is saved until somebody says so.</summary>
internal static class MoveRoutes
{
    private const string Put = "put|";

    /// <summary>Makes them answerable.</summary>
    public static void Map(WebApplication app)
    {
        app.MapGet("/jobs/{id}/drawings/rooms", (RequestDelegate)(http => Show(new Visit(http))));
        app.MapPost("/jobs/{id}/drawings/rooms", (RequestDelegate)(http => Move(new Visit(http))));
        app.MapGet("/jobs/{id}/drawings/ports", (RequestDelegate)(http => Show(new Visit(http))));
        app.MapPost("/jobs/{id}/drawings/ports", (RequestDelegate)(http => Move(new Visit(http))));
    }

    private static async Task Show(Visit visit)
    {
        if (await visit.Open().ConfigureAwait(false) is not { } open)
            return;
        var notice = visit.Http.Asked("saved") is { } saved ? visit.Http.Asked("with") is { } with ? $"Saved as revision {saved}. Meanwhile somebody else saved too, and both are kept: {with}" : $"Saved as revision {saved}." : null;
        if (visit.Study(open) is not { } studied || Board(visit, studied.Job) is not { } board)
        {
            await Page(visit, (open, null), null, StatusCodes.Status200OK).ConfigureAwait(false);
            return;
        }

        var sheet = new MoveWork(visit.Shelf, visit.Saving, board, new(open, studied)).Show(Draft.Empty);
        await Page(visit, (open, studied), sheet with { Notice = notice }, StatusCodes.Status200OK).ConfigureAwait(false);
    }

    private static async Task Move(Visit visit)
    {
        var form = await visit.Http.Request.ReadFormAsync(visit.Http.RequestAborted).ConfigureAwait(false);
        if (await visit.Base(form).ConfigureAwait(false) is not { } open)
            return;
        if (visit.Study(open) is not { } studied || Board(visit, studied.Job) is not { } board)
        {
            await visit.Http.Nothing("such drawing of the job").ConfigureAwait(false);
            return;
        }

        var work = new MoveWork(visit.Shelf, visit.Saving, board, new(open, studied));
        var (draft, typed) = Asked(form, Draft.Of(form["now"].ToString(), form["before"].ToString()));
        var (sheet, text) = work.Try(draft, typed);
        if (form["do"] == "save" && text is not null)
        {
            var saved = work.Save(Draft.Of(sheet.Now, sheet.Before), text, visit.By);
            if (saved.Number is { } number)
            {
                var with = saved.Merged is { } merged ? $"&with={Uri.EscapeDataString(ChangeWords.Of(merged.Theirs))}" : "";
                var head = visit.Head(open, "drawings", studied);
                await visit.Http.GoOn((head with { Revision = head.Head }).To(board.Path, (board.Query.Length > 0 ? board.Query + "&" : "") + $"saved={number}{with}")).ConfigureAwait(false);
                return;
            }

            (sheet, open, studied) = (saved.Sheet!, saved.On.Open, saved.On.Studied);
        }
        else if (!open.IsLast)
        {
            sheet = sheet with { Notice = $"Somebody saved revision {open.Stored.Head} meanwhile. Yours is of revision {open.Number}; both are brought together when you save." };
        }

        var status = sheet.Clash.Count > 0 ? StatusCodes.Status409Conflict : sheet.IsRefused ? StatusCodes.Status422UnprocessableEntity : StatusCodes.Status200OK;
        await Page(visit, (open, studied), sheet, status, form.ContainsKey("part")).ConfigureAwait(false);
    }

    // What is asked for: a field for a field as it was typed, one cord onto another port, one step back, or all of it.
    private static (Draft Draft, IReadOnlyDictionary<string, string> Typed) Asked(IFormCollection form, Draft draft)
    {
        var asked = form["do"].ToString();
        if (asked == "back")
            return (draft.Back(), new Dictionary<string, string>());
        if (asked == "drop")
            return (Draft.Empty, new Dictionary<string, string>());
        var typed = form.Keys.Where(key => key.Contains('/', StringComparison.Ordinal)).ToDictionary(key => key, key => form[key].ToString());
        if (asked.StartsWith(Put, StringComparison.Ordinal) && asked.Split('|') is [_, var field, var value])
            typed[field] = value;
        return (draft, typed);
    }

    private static IMoveBoard? Board(Visit visit, Domain.Jobs.Job job)
    {
        if (visit.Http.Request.Path.Value!.EndsWith("/ports", StringComparison.Ordinal))
            return new PortBoard();
        var rooms = RoomsOf(job);
        var asked = visit.Http.Asked("space");
        return asked is null ? rooms.Count > 0 ? new RoomBoard(rooms[0]) : null : rooms.Contains(asked) ? new RoomBoard(asked) : null;
    }

    // Where somebody listens comes first; a room without a size cannot be drawn.
    private static List<string> RoomsOf(Domain.Jobs.Job job) =>
        [.. job.Survey.Spaces.Where(space => space.Size is not null).OrderBy(space => job.Survey.Listeners.Any(one => one.In == space.Id) ? 0 : 1).Select(space => space.Id)];

    private static Task Page(Visit visit, (Work.OpenJob Open, Work.StudiedDesign? Studied) job, MoveSheet? sheet, int status, bool part = false)
    {
        var head = visit.Head(job.Open, "drawings", job.Studied);
        if (part && sheet is not null)
            return visit.Http.Page<MoveBench>(new Dictionary<string, object?> { ["Head"] = head, ["Sheet"] = sheet }, status);
        var rooms = job.Studied is null ? [] : RoomsOf(job.Studied.Job);
        var isRooms = visit.Http.Request.Path.Value!.EndsWith("/rooms", StringComparison.Ordinal);
        var room = isRooms ? visit.Http.Asked("space") ?? rooms.FirstOrDefault() : null;
        return visit.Http.Page<MovesPage>(
            new Dictionary<string, object?> { ["Head"] = head, ["Sheet"] = sheet, ["Part"] = isRooms ? "rooms" : "ports", ["Rooms"] = isRooms ? rooms : [], ["Room"] = room }, status);
    }
}

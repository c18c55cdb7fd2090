using System.Text;
using Headroom.Desk.Pages;
using Headroom.Desk.Tasks;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;

namespace Headroom.Desk.Serving;

/// <summary>The enquiry note of a job, with its rough price.</summary>
internal static class EnquiryRoutes
{
    /// <summary>Makes them answerable.</summary>
    public static void Map(WebApplication app)
    {
        app.MapGet("/jobs/{id}/enquiry", (RequestDelegate)(http => Show(new Visit(http))));
        app.MapPost("/jobs/{id}/enquiry", (RequestDelegate)(http => WorkRoutes.Begin(new Visit(http), "enquiry", "enquiry")));
        app.MapGet("/jobs/{id}/enquiry.txt", (RequestDelegate)(http => Send(new Visit(http))));
    }

    private static KeptEnquiry? Note(Visit visit) =>
        visit.Store.LastTask(visit.JobId, "enquiry") is { } task && visit.Store.Result(task.Id) is { } result ? KeptEnquiry.Read(result) : null;

    private static async Task Show(Visit visit)
    {
        if (await visit.Open().ConfigureAwait(false) is not { } open)
            return;
        await visit.Http.Page<EnquiryPage>(new Dictionary<string, object?>
        {
            ["Head"] = visit.Head(open, "enquiry", visit.Study(open)), ["Task"] = WorkRoutes.Model(visit.Store.LastTask(open.Stored.Id, "enquiry")), ["Note"] = Note(visit),
        }).ConfigureAwait(false);
    }

    private static Task Send(Visit visit) => Note(visit) is { } note
        ? visit.Http.Send($"{visit.JobId}-enquiry.txt", "application/octet-stream", Encoding.UTF8.GetBytes(note.ToText()))
        : visit.Http.Nothing("enquiry note of the job yet");
}

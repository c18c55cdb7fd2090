using Headroom.Desk.Pages;
using Headroom.Domain.Findings;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Http.HttpResults;

namespace Headroom.Desk.Serving;

/// <summary>Ways to answer a request.</summary>
internal static class Answers
{
    /// <summary>Answers with a page.</summary>
    public static Task Page<T>(this HttpContext http, IReadOnlyDictionary<string, object?> parameters, int status = StatusCodes.Status200OK)
        where T : IComponent
    {
        http.Response.Headers.CacheControl = "no-store";
        return new RazorComponentResult<T>(parameters) { StatusCode = status, PreventStreamingRendering = true }.ExecuteAsync(http);
    }

    /// <summary>Says why not, and what to do.</summary>
    public static Task Refuse(this HttpContext http, int status, string why, string advice, IReadOnlyList<Finding>? findings = null) =>
        http.Page<RefusalPage>(new Dictionary<string, object?> { ["Why"] = why, ["Advice"] = advice, ["Findings"] = findings ?? [] }, status);

    /// <summary>Says that there is nothing under an address.</summary>
    public static Task Nothing(this HttpContext http, string what) => http.Refuse(StatusCodes.Status404NotFound, $"There is no {what}.", "The list of jobs has all there are.");

    /// <summary>Leads on to a page behind a form that was taken.</summary>
    public static Task GoOn(this HttpContext http, string address)
    {
        http.Response.StatusCode = StatusCodes.Status303SeeOther;
        http.Response.Headers.Location = address;
        return Task.CompletedTask;
    }

    /// <summary>Sends a file to be saved, never to be shown as a page.</summary>
    public static async Task Send(this HttpContext http, string name, string type, ReadOnlyMemory<byte> bytes)
    {
        http.Response.ContentType = type;
        http.Response.ContentLength = bytes.Length;
        http.Response.Headers.ContentDisposition = new System.Net.Mime.ContentDisposition { FileName = name, Inline = false }.ToString();
        await http.Response.Body.WriteAsync(bytes, http.RequestAborted).ConfigureAwait(false);
    }

    /// <summary>A part of the query; null when it is not there.</summary>
    public static string? Asked(this HttpContext http, string name) => http.Request.Query[name].FirstOrDefault() is { Length: > 0 } text ? text : null;

    /// <summary>A number in the query or a form; null when it is none.</summary>
    public static int? Number(string? text) => int.TryParse(text, System.Globalization.NumberStyles.None, System.Globalization.CultureInfo.InvariantCulture, out var number) ? number : null;
}

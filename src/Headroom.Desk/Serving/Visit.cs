using Headroom.Desk.Shown;
using Headroom.Desk.Work;
using Headroom.Domain.Jobs;
using Headroom.Store;
using Microsoft.AspNetCore.Http;
using Microsoft.Extensions.DependencyInjection;

namespace Headroom.Desk.Serving;

/// <summary>One request with what it needs: the store, the jobs, who asks.</summary>
internal sealed class Visit(HttpContext http)
{
    private const string NameCookie = "headroom-name";

    public HttpContext Http => http;

    public JobStore Store => http.RequestServices.GetRequiredService<JobStore>();

    public JobShelf Shelf => http.RequestServices.GetRequiredService<JobShelf>();

    public JobSaving Saving => http.RequestServices.GetRequiredService<JobSaving>();

    /// <summary>Who asks.</summary>
    public string By => http.Request.Cookies[NameCookie] is { Length: > 0 } name ? Uri.UnescapeDataString(name) : http.RequestServices.GetRequiredService<DeskSettings>().By;

    /// <summary>The job in the address.</summary>
    public string JobId => http.Request.RouteValues["id"] as string ?? "";

    /// <summary>Keeps the name of who asks.</summary>
    public void KeepName(string name) => http.Response.Cookies.Append(NameCookie, Uri.EscapeDataString(name), new CookieOptions { HttpOnly = true, SameSite = SameSiteMode.Strict, MaxAge = TimeSpan.FromDays(365), IsEssential = true });

    /// <summary>The revision that is asked for; null when the address leads to none, which has then been said.</summary>
    public async Task<OpenJob?> Open()
    {
        var number = Answers.Number(http.Asked("revision"));
        if (Shelf.Open(JobId, number) is { } open)
            return open;
        await http.Nothing(number is null ? "such job" : "such revision of the job").ConfigureAwait(false);
        return null;
    }

    /// <summary>The revision a form was made of; null when there is none, which has then been said.</summary>
    public async Task<OpenJob?> Base(IFormCollection form)
    {
        if (Shelf.Open(JobId, Answers.Number(form["revision"])) is { } open)
            return open;
        await http.Nothing("such revision of the job").ConfigureAwait(false);
        return null;
    }

    /// <summary>The design that is asked for; null for the chosen one.</summary>
    public StudiedDesign? Study(OpenJob open) => Shelf.Study(open, http.Asked("design"));

    /// <summary>What stands at the head of a sheet.</summary>
    /// <param name="open">The job.</param>
    /// <param name="path">The end of the address of the sheet, or of a part of it.</param>
    /// <param name="studied">The design shown; null for none.</param>
    public SheetHead Head(OpenJob open, string path, StudiedDesign? studied)
    {
        var sheetPath = SheetHead.Parts.FirstOrDefault(part => part.Path == path).Sheet ?? path;
        var number = SheetHead.Sheets.Select((sheet, at) => (sheet.Path, Number: at + 1)).First(sheet => sheet.Path == sheetPath).Number;
        var revision = Store.Revisions(open.Stored.Id).FirstOrDefault(one => one.Number == open.Number);
        IReadOnlyList<Design> designs = open.Read?.Designs ?? [];
        return new(open.Stored.Id, open.Read?.Name ?? open.Stored.Name, number, studied?.Id ?? "", [.. designs.Select(design => design.Id)], open.Number, open.Stored.Head, LedgerModel.Day(Shelf.Today), revision?.By ?? open.Stored.By) { Here = path };
    }
}

using Headroom.Desk.Pages;
using Headroom.Desk.Shown;
using Headroom.Engineering.Years;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;

namespace Headroom.Desk.Serving;

/// <summary>What becomes of a design over the years.</summary>
internal static class YearRoutes
{
    private const int Usual = 5;

    /// <summary>Makes them answerable.</summary>
    public static void Map(WebApplication app) => app.MapGet("/jobs/{id}/years", (RequestDelegate)(http => Show(new Visit(http))));

    private static async Task Show(Visit visit)
    {
        if (await visit.Open().ConfigureAwait(false) is not { } open)
            return;
        var studied = visit.Study(open);
        var asked = visit.Http.Asked("until");
        var until = asked is null ? Usual : Answers.Number(asked) is { } number and >= 1 and <= YearsStudy.Most ? number : (int?)null;
        var model = studied?.Ask(one => YearsModel.Of(YearsStudy.Of(one.Job, open.Models.Models, one.Request, until ?? Usual), one.Ledger));
        await visit.Http.Page<YearsPage>(
            new Dictionary<string, object?>
            {
                ["Head"] = visit.Head(open, "years", studied), ["Model"] = model, ["Most"] = YearsStudy.Most,
                ["Refused"] = until is null ? $"'{asked}': a whole number from 1 to {YearsStudy.Most}; {Usual} were worked out" : null,
            },
            until is null ? StatusCodes.Status422UnprocessableEntity : StatusCodes.Status200OK).ConfigureAwait(false);
    }
}

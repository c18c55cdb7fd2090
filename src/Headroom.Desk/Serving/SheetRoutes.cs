using Headroom.Desk.Pages;
using Headroom.Desk.Shown;
using Headroom.Desk.Work;
using Headroom.Documents.Canvas;
using Headroom.Documents.Drawings;
using Headroom.Domain.Ledgers;
using Headroom.Domain.Shown;
using Headroom.Engineering;
using Headroom.Engineering.Differences;
using Headroom.Engineering.Standby;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;

namespace Headroom.Desk.Serving;

/// <summary>The sheets that only show: ledger, entries, designs, drawings.</summary>
internal static class SheetRoutes
{
    private const string NotThere = "not there";
    private static readonly string[] RestartSheetKinds = ["restart", "discharge"];
    /// <summary>Makes them answerable.</summary>
    public static void Map(WebApplication app)
    {
        app.MapGet("/jobs/{id}", (RequestDelegate)(http => Ledger(new Visit(http))));
        app.MapGet("/jobs/{id}/entry", (RequestDelegate)(http => Entry(new Visit(http))));
        app.MapGet("/jobs/{id}/designs", (RequestDelegate)(http => Designs(new Visit(http))));
        app.MapGet("/jobs/{id}/drawings", (RequestDelegate)(http => Drawings(new Visit(http))));
        app.MapGet("/jobs/{id}/drawings/restart", (RequestDelegate)(http => Restart(new Visit(http))));
    }

    private static async Task Ledger(Visit visit)
    {
        if (await visit.Open().ConfigureAwait(false) is not { } open)
            return;
        var studied = visit.Study(open);
        await visit.Http.Page<LedgerPage>(new Dictionary<string, object?>
        {
            ["Head"] = visit.Head(open, "", studied), ["Model"] = studied?.Ask(one => one.Shown), ["All"] = visit.Http.Asked("all") is not null, ["Findings"] = open.Errors.ToList(),
            ["Notice"] = visit.Http.Asked("saved") is { } saved ? $"Saved as revision {saved}." : null,
        }).ConfigureAwait(false);
    }

    private static async Task Entry(Visit visit)
    {
        if (await visit.Open().ConfigureAwait(false) is not { } open)
            return;
        var studied = visit.Study(open);
        if (studied?.Ask(one => EntryModel.Of(one.Ledger, visit.Http.Asked("id") ?? "")) is not { } model)
        {
            await visit.Http.Nothing("such entry in this design").ConfigureAwait(false);
            return;
        }

        await visit.Http.Page<EntryPage>(new Dictionary<string, object?> { ["Head"] = visit.Head(open, "", studied), ["Model"] = model }).ConfigureAwait(false);
    }

    private static async Task Designs(Visit visit)
    {
        if (await visit.Open().ConfigureAwait(false) is not { } open)
            return;
        var studied = visit.Study(open);
        var head = visit.Head(open, "designs", studied);
        var page = new Dictionary<string, object?> { ["Head"] = head };
        var others = head.Designs.Where(design => design != head.Design).ToList();
        if (studied is not null && others.Count > 0)
        {
            var with = visit.Http.Asked("with") is { } asked && others.Contains(asked) ? asked : others[0];
            var second = visit.Shelf.Study(open, with)!;
            var ledgers = LedgerDifference.Of(studied.Ledger, second.Ledger);
            page["Others"] = others;
            page["With"] = with;
            page["Overview"] = head.Designs.Select(design => Line(visit.Shelf.Study(open, design)!)).ToList();
            page["Differences"] = DesignDifferences.Of(Study.DesignOf(studied.Job, studied.Id)!, Study.DesignOf(studied.Job, with)!).Select(one => (one.Subject, one.Text)).ToList();
            page["Changes"] = Changes(ledgers);
            page["Same"] = ledgers.Same;
        }

        await visit.Http.Page<DesignsPage>(page).ConfigureAwait(false);
    }

    private static DesignLine Line(StudiedDesign studied)
    {
        var (ledger, kept) = (studied.Ledger, studied.Ask(one => one.Shown.Kept));
        var worst = kept.Rows.Count == 0 ? "" : $"{kept.Rows[0].Subject}, {kept.Rows[0].What}: {kept.Rows[0].Verdict}";
        return new(ledger.Design, ledger.Count(Verdict.Short), ledger.Count(Verdict.Tight), ledger.Count(Verdict.Unknown), kept.Money, worst);
    }

    private static List<EntryDifference> Changes(LedgerDifference ledgers) =>
    [
        .. ledgers.Verdicts.Concat(ledgers.Much).Select(change => new EntryDifference(change.After.Id, LedgerInWords.Word(change.Before.Verdict), LedgerInWords.Word(change.After.Verdict), Left(change), true)),
        .. ledgers.OnlyBefore.Select(entry => new EntryDifference(entry.Id, LedgerInWords.Word(entry.Verdict), NotThere, "", false)),
        .. ledgers.OnlyAfter.Select(entry => new EntryDifference(entry.Id, NotThere, LedgerInWords.Word(entry.Verdict), "", true)),
    ];

    private static string Left(EntryChange change)
    {
        if (change.Moved is null)
            return "";
        var unit = ShownUnits.Metric.Of(change.After.Unit);
        var left = Numbers.Together([unit.Difference(change.Before.Left), unit.Difference(change.After.Left)]);
        return $"{left[0]} to {Numbers.WithUnit(left[1], unit.Between)}";
    }

    private static async Task Restart(Visit visit)
    {
        if (await visit.Open().ConfigureAwait(false) is not { } open)
            return;
        var studied = visit.Study(open);
        var page = new Dictionary<string, object?> { ["Head"] = visit.Head(open, "drawings", studied) };
        if (studied is not null)
        {
            page["Drawings"] = studied.Ask(one => RestartSheetKinds.SelectMany(kind => DrawingList.Find(kind)!.All(one.Input)).Select(picture => (picture.Title, SvgCanvas.Write(picture))).ToList());
            page["Events"] = studied.Ask(one => RestartTimeline.Of(one.Results.Standby).Select(RestartLine.Of).ToList());
            page["Lines"] = studied.Ask(one => one.Ledger.Entries.Zip(one.Shown.Lines).Where(pair => IsOfRestart(pair.First) || one.Results.Bound.Switches.Any(unit => pair.First.Id == $"power/{unit.Id}/watts")).Select(pair => pair.Second).ToList());
        }

        await visit.Http.Page<RestartPage>(page).ConfigureAwait(false);
    }

    // What the minutes after an outage ask: the starts, and what must go on through them.
    private static bool IsOfRestart(LedgerEntry entry) => entry.Id.Split('/') is [_, _, "restart" or "back" or "runtime" or "on-battery"];

    private static async Task Drawings(Visit visit)
    {
        if (await visit.Open().ConfigureAwait(false) is not { } open)
            return;
        var studied = visit.Study(open);
        var drawings = studied?.Ask(one => DrawingList.All.SelectMany(kind => kind.All(one.Input)).Select(picture => (picture.Title, SvgCanvas.Write(picture))).ToList());
        await visit.Http.Page<DrawingsPage>(new Dictionary<string, object?> { ["Head"] = visit.Head(open, "drawings", studied), ["Drawings"] = drawings ?? [] }).ConfigureAwait(false);
    }
}

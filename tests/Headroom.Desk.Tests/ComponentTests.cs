using System.Globalization;
using AngleSharp.Dom;
using Bunit;
using Headroom.Desk.Moving;
using Headroom.Desk.Pages;
using Headroom.Desk.Shown;
using Headroom.Desk.Work;
using Headroom.Domain.Ledgers;
using Headroom.JobFiles;
using Headroom.JobFiles.Changes;
using Headroom.Store;
using Microsoft.AspNetCore.Http;
using Microsoft.Extensions.DependencyInjection;

namespace Headroom.Desk.Tests;

/// <summary>Components by themselves, with the example in them.</summary>
public sealed class ComponentTests : IAsyncDisposable
{
    private static readonly DateOnly Day = new(2026, 11, 25);
    private static readonly SheetHead Head = new("barn", "Barn", 1, "as-offered", ["as-offered"], 1, 1, "25 Nov 2026", "R. Hollis");
    private static readonly MoveBase Barn = OfExample();

    private readonly BunitContext _page = new();

    public ComponentTests()
    {
        _page.Services.AddSingleton<IHttpContextAccessor>(new HttpContextAccessor());
    }

    public ValueTask DisposeAsync() => _page.DisposeAsync();

    // Solid is what is asked; where the limit is less, it ends there and the rest is rust. Both are measured on the drawing.
    [Fact]
    public void An_entry_bar_is_as_long_as_its_figures_say()
    {
        var entries = Barn.Studied.Ledger.Entries.Where(entry => entry is { Floor: null or 0, Demand: > 0, Limit: > 0, Peak: null, Verdict: Verdict.Short or Verdict.Tight }).ToList();
        Assert.Contains(entries, entry => entry.Verdict == Verdict.Short);
        foreach (var entry in entries)
        {
            var bar = Lines(entry).Find("td.bar svg");
            var solid = bar.QuerySelector("rect.fill-ink")!;
            var limit = bar.QuerySelectorAll("line.line-ink").Select(line => Number(line, "x1")).Max();
            var (demand, most) = (entry.Demand!.Value, entry.Limit!.Value);
            Assert.Equal(Math.Min(1, demand / most), Number(solid, "width") / (limit - Number(solid, "x")), 0.01);
            var beyond = bar.QuerySelector("rect.fill-rust");
            Assert.Equal(demand > most, beyond is not null);
            if (beyond is not null)
                Assert.Equal(Math.Min(0.2, demand / most - 1), Number(beyond, "width") / (limit - Number(solid, "x")), 0.01);
        }
    }

    [Fact]
    public void A_line_of_the_ledger_says_its_verdict_as_word_and_mark_and_opens()
    {
        var entry = Barn.Studied.Ledger.Entries.First(one => one.Id == "power/sw-1/watts");
        var row = Lines(entry).Find("tbody tr");
        Assert.Equal("short", row.ClassName);
        Assert.Equal("sw-1 watts, restart, by class asked 254.4, there is 217.0 254.4 217.0 W -37.4 W ✕ short", Words.Of(row));
        Assert.Equal("/jobs/barn/entry?design=as-offered&id=power%2Fsw-1%2Fwatts", row.QuerySelector("th a")!.GetAttribute("href"));
    }

    [Fact]
    public void A_line_that_is_open_asks_in_place_of_figures()
    {
        var row = Lines(Barn.Studied.Ledger.Entries.First(one => one.Id == "cabling/K-15/length")).Find("tbody tr");
        Assert.Equal("5", row.QuerySelector("td.ask")!.GetAttribute("colspan"));
        Assert.Contains("how long is K-15?", Words.Of(row), StringComparison.Ordinal);
        Assert.Empty(row.QuerySelectorAll("svg, .figure"));
    }

    [Theory, InlineData("short", "✕"), InlineData("tight", "△"), InlineData("clear", "·"), InlineData("unknown", "?")]
    public void A_verdict_is_told_without_colour(string verdict, string mark) =>
        Assert.Equal($"{mark} {verdict}", Words.Of(_page.Render<VerdictWord>(set => set.Add(word => word.Verdict, verdict)).Find("span")));

    [Fact]
    public void A_table_keeps_what_was_typed_and_says_what_is_wrong_at_its_cell()
    {
        var columns = JobTable.Of("survey: {}", "listeners").Columns.Take(3).ToList();
        var wrong = new SurveyRow("desk", new Dictionary<string, string> { [columns[0].Key] = "reception", [columns[1].Key] = "two metres" }, false) { Wrong = new Dictionary<string, string> { [columns[1].Key] = "is no spot" } };
        var table = _page.Render<SurveyPage>(set => set.Add(page => page.Head, Head with { Sheet = 2 }).Add(page => page.Part, "listeners").Add(page => page.Columns, columns)
            .Add(page => page.Rows, [wrong, new("ears", new Dictionary<string, string>(), false) { IsPlain = false }, new("", new Dictionary<string, string>(), true)]));
        var cell = table.Find($"input[name='r0.{columns[1].Key}']");
        Assert.Equal(("two metres", "true", $"{columns[1].Key} of desk"), (cell.GetAttribute("value"), cell.GetAttribute("aria-invalid"), cell.GetAttribute("aria-label")));
        Assert.Equal("is no spot", Words.Of(cell.ParentElement!.QuerySelector(".wrong")));
        Assert.Null(table.Find($"input[name='r0.{columns[0].Key}']").GetAttribute("aria-invalid"));
        // What is not written with keys is not changed here; a new row shows what one writes.
        Assert.Empty(table.FindAll($"input[name='r1.{columns[0].Key}']"));
        Assert.Equal(columns[0].Example, table.Find($"input[name='r2.{columns[0].Key}']").GetAttribute("placeholder"));
        Assert.Equal("name of a new row", table.Find("input[name='r2.name']").GetAttribute("aria-label"));
    }

    // The script reckons a number from a place on the drawing: from where a thing is drawn it must come to what its field says.
    [Theory, InlineData("reception"), InlineData("kennels"), InlineData("cupboard"), InlineData("")]
    public void A_grip_lies_where_its_fields_say(string room)
    {
        var sheet = Bench(room.Length == 0 ? new PortBoard() : new RoomBoard(room));
        var checkedAxes = 0;
        foreach (var grip in sheet.FindAll("[data-grip]"))
        {
            foreach (var (axis, place) in new[] { ("data-across", "data-x"), ("data-down", "data-y") })
            {
                if (grip.GetAttribute(axis) is not { } text)
                    continue;
                var parts = text.Split('|');
                var (origin, scale, first) = (double.Parse(parts[1], CultureInfo.InvariantCulture), double.Parse(parts[2], CultureInfo.InvariantCulture), double.Parse(parts[3], CultureInfo.InvariantCulture));
                var field = sheet.Find($"input[name='{Uri.UnescapeDataString(parts[0])}']");
                var said = field.GetAttribute("value") is { Length: > 0 } value ? value : field.GetAttribute("placeholder")!.Split(' ')[^1];
                Assert.Equal(double.Parse(said, CultureInfo.InvariantCulture), first + (Number(grip, place) - origin) / scale, 0.005);
                checkedAxes++;
            }
        }

        Assert.True(checkedAxes >= 2, $"{checkedAxes} axes");
    }

    [Fact]
    public void A_face_has_a_place_for_every_port_and_a_grip_for_every_cord()
    {
        var sheet = Bench(new PortBoard());
        Assert.Equal(26, sheet.FindAll("[data-place]").Count);
        foreach (var grip in sheet.FindAll("[data-grip^='cord/']"))
        {
            var port = sheet.Find($"input[name='{grip.GetAttribute("data-onto")}']").GetAttribute("value");
            var (place, ring) = (sheet.Find($"[data-place='{port}']"), grip.QuerySelector(".ring")!);
            Assert.Equal((Number(place, "x"), Number(place, "y")), (Number(ring, "x"), Number(ring, "y")));
        }
    }

    [Fact]
    public void A_slip_of_a_move_stands_at_its_thing_with_what_may_be_done_instead()
    {
        var board = new PortBoard();
        var things = board.Things(Barn).Select(thing => thing.Name == "K-07" ? thing with { Slip = new("it is taken.", "Swap them", "put|a|b") } : thing).ToList();
        var sheet = Bench(new MoveSheet(board.Path, board.Query, [], things, "", ""));
        var row = sheet.Find("tr[data-thing='cord/K-07']");
        Assert.Equal(("it is taken.", "Swap them"), (Words.Of(row.QuerySelector(".wrong")), Words.Of(row.QuerySelector("button[value='put|a|b']"))));
        Assert.Equal("K-07 stays where it was: it is taken.", Words.Of(sheet.Find("[role=status]")));
        // With Enter in a field the first button is meant: nothing is ever saved by that.
        Assert.Equal("try", sheet.Find("form.moves button").GetAttribute("value"));
    }

    [Fact]
    public void What_a_move_does_is_told_as_worse_and_better()
    {
        var table = _page.Render<EffectTable>(set => set.Add(one => one.Head, Head).Add(one => one.Effects,
        [
            new("a/b/c", "b", "limit", "1 of 3, 2 left", "4 of 3, -1 left", "clear", "short", false), new("a/d/c", "d", "limit", "2 of 3, 1 left", "1 of 3, 2 left", "clear", "clear", true),
        ]));
        var rows = table.FindAll("tbody tr");
        Assert.Equal("b limit 1 of 3, 2 left · clear 4 of 3, -1 left ✕ short worse", Words.Of(rows[0]));
        Assert.Equal("d limit 2 of 3, 1 left 1 of 3, 2 left · clear better", Words.Of(rows[1]));
        Assert.Equal("Of the ledger 1 entry gets worse, 1 better.", EffectTable.Counted([.. new[] { false, true }.Select(better => new EntryEffect("", "", "", "", "", "", "", better))]));
        Assert.Equal("No entry of the ledger reads otherwise.", EffectTable.Counted([]));
    }

    private IRenderedComponent<LedgerTable> Lines(LedgerEntry entry) => _page.Render<LedgerTable>(set => set.Add(table => table.Head, Head).Add(table => table.Lines, [LedgerModel.Line(entry)]));

    private IRenderedComponent<MoveBench> Bench(IMoveBoard board)
    {
        var things = board.Things(Barn);
        return Bench(new MoveSheet(board.Path, board.Query, board.Pictures(Barn.Studied, things), things, "", ""));
    }

    private IRenderedComponent<MoveBench> Bench(MoveSheet sheet) => _page.Render<MoveBench>(set => set.Add(bench => bench.Head, Head).Add(bench => bench.Sheet, sheet));

    private static double Number(IElement element, string name) => double.Parse(element.GetAttribute(name)!, CultureInfo.InvariantCulture);

    private static MoveBase OfExample()
    {
        var text = File.ReadAllText(Repository.PathOf("examples/barn-vets/job.yaml"));
        var models = new ModelsAtHand(CatalogueFiles.ReadShipped().Value!, null, "", "", []);
        var job = JobFile.ParseMeanwhile(text, JobShelf.FileName, null, () => models.Models, null).Value!;
        var stored = new StoredJob("barn", job.Name, 1, DateTimeOffset.UnixEpoch, "R. Hollis");
        return new(new OpenJob(stored, 1, JobText.Of(text), job, [], models), JobShelf.Study(job, models, "as-offered", Day));
    }
}

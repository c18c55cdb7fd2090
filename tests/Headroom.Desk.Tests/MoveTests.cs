using System.Diagnostics;
using System.Globalization;
using System.Net;
using AngleSharp.Dom;
using AngleSharp.Html.Dom;

namespace Headroom.Desk.Tests;

public sealed class MoveTests
{
    private const string Reception = DeskSite.Barn + "/drawings/rooms?space=reception";
    private const string Ports = DeskSite.Barn + "/drawings/ports";
    private const string Office = "/jobs/two-desks/drawings/rooms";
    private const string DeskAlong = "listeners/desk/at|0";

    [Fact]
    public async Task A_listener_is_moved_worked_out_and_saved_as_a_revision()
    {
        await using var site = await DeskSite.WithBarn();
        // Towards the cupboard, where the equipment is.
        var page = await Try(site, await site.Page(Reception), ("listeners/desk/at|0", "4.7"), ("listeners/desk/at|1", "4.6"));
        Assert.Contains("at of desk of listeners: 4.7 x 4.6 x 1.2 m, was 2.4 x 1.2 x 1.2 m", Said(page), StringComparison.Ordinal);
        Assert.Contains("What was measured at desk was measured where it was", Said(page), StringComparison.Ordinal);
        Assert.StartsWith("desk sound, weekday, summer 39.66 of 41.00", Words.Of(page.QuerySelector("table.effects tbody tr")), StringComparison.Ordinal);
        Assert.Equal(1, site.Store.Find("cobnut-barn-animal-doctors")!.Head);
        page = await Send(site, page, "save");
        Assert.Contains("Saved as revision 2.", Words.Of(page), StringComparison.Ordinal);
        Assert.Contains("desk:  {in: reception, at: 4.7 x 4.6 x 1.2 m, limit: 41 dB(A)", site.Store.Read("cobnut-barn-animal-doctors", 2)!.Text, StringComparison.Ordinal);
        Assert.Contains("at of desk of listeners: 4.7 x 4.6 x 1.2 m, was 2.4 x 1.2 x 1.2 m", site.Store.Revisions("cobnut-barn-animal-doctors")[0].What, StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_the_page_says_of_a_move_is_what_a_study_of_the_moved_job_says()
    {
        await using var site = await DeskSite.WithBarn();
        var page = await Try(site, await site.Page(Ports), ("cord/K-07", "sw-1/23"), ("cord/K-12", "sw-1/26"));
        var effects = page.QuerySelectorAll("table.effects tbody tr").ToDictionary(row => Words.Of(row.Children[0]), row => (After: Words.Of(row.Children[2]), Is: Words.Of(row.Children[3])));
        Assert.Equal(("17.3 of 0.0, -17.3 W left ✕ short", "worse"), effects["ap-2 port watts: gives none"]);
        Assert.Equal(("224.4 of 217.0, -7.4 W left ✕ short", "better"), effects["sw-1 watts, restart, by class"]);
        await Send(site, page, "save");
        var told = 0;
        foreach (var line in (await site.Page(DeskSite.Barn + "?all=1")).QuerySelectorAll("table.ledger tbody tr"))
        {
            if (line.QuerySelector("[data-head=asked]") is not { } asked || !effects.TryGetValue(Words.Of(line.Children[0]) + " " + Words.Of(line.Children[1]), out var effect))
                continue;
            Assert.StartsWith($"{Words.Of(asked)} of {Words.Of(line.QuerySelector("[data-head='there is']"))}, {Words.Of(line.QuerySelector("[data-head=left]"))} left", effect.After, StringComparison.Ordinal);
            told++;
        }

        Assert.True(told > 9, $"{told} entries");
    }

    [Fact]
    public async Task Nearer_to_a_fan_it_is_louder()
    {
        await using var site = await TwoDesks();
        var page = await Try(site, await site.Page(Office), ("listeners/right desk/at|1", "1.8"));
        var row = page.QuerySelectorAll("table.effects tbody tr").First(row => Words.Of(row).StartsWith("right desk", StringComparison.Ordinal));
        Assert.EndsWith("worse", Words.Of(row), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("listeners/desk/at|0", "9.4", "listener desk is at x = 9.4 m in reception")]
    [InlineData("listeners/desk/at|0", "", "Give all three, or none of them.")]
    [InlineData("listeners/desk/at|0", "a yard", "a yard")]
    [InlineData("spaces/reception/size|0", "2", "listener desk is at x = 2.4 m in reception")]
    public async Task What_cannot_be_is_said_at_the_thing_and_the_drawing_stays(string field, string typed, string said)
    {
        await using var site = await DeskSite.WithBarn();
        var before = await site.Page(Reception);
        var page = await Try(site, before, [(field, typed)], HttpStatusCode.UnprocessableEntity);
        var row = Field(page, field).Closest("tr")!;
        Assert.Contains(said, Words.Of(row), StringComparison.Ordinal);
        Assert.Equal("true", Field(page, field).GetAttribute("aria-invalid"));
        Assert.Equal(typed, Field(page, field).Value);
        Assert.Equal(Field(before, field).Value, Field(page, field).GetAttribute("data-good"));
        Assert.Equal(before.QuerySelector("[data-live=plan]")!.InnerHtml, page.QuerySelector("[data-live=plan]")!.InnerHtml);
    }

    [Fact]
    public async Task Moves_are_taken_back_one_by_one()
    {
        await using var site = await DeskSite.WithBarn();
        var first = await Try(site, await site.Page(Reception), (DeskAlong, "3"));
        var second = await Try(site, first, (DeskAlong, "3.5"));
        var back = await Send(site, second, "back");
        Assert.Equal("3", Field(back, DeskAlong).Value);
        Assert.Equal(first.QuerySelector("[data-live=plan]")!.InnerHtml, back.QuerySelector("[data-live=plan]")!.InnerHtml);
        back = await Send(site, back, "back");
        Assert.Equal(("2.4", "Nothing is moved."), (Field(back, DeskAlong).Value, Said(back)));
        Assert.True(Button(back, "back").IsDisabled && Button(back, "save").IsDisabled);
        Assert.Equal("2.4", Field(await Send(site, second, "drop"), DeskAlong).Value);
    }

    [Fact]
    public async Task A_wall_is_moved_and_a_place_is_kept_in_the_unit_it_is_written_in()
    {
        await using var site = await Room("""
              spaces: {office: {size: 20 x 14 x 9 ft measured, kind: open office}}
              listeners: {ear: {in: office, at: 6 ft x 5 ft x 4 ft}}
              noises: {copier: {in: office, power: 5.2 B declared}}
            """);
        var address = "/jobs/room/drawings/rooms";
        var page = await Try(site, await site.Page(address), ("spaces/office/size|0", "22.5"), ("listeners/ear/at|1", "6.25"), ("noises/copier/at|0", "2 m"), ("noises/copier/at|1", "2.5"), ("noises/copier/at|2", "0.8"));
        await Send(site, page, "save");
        var text = site.Store.Read("room", 2)!.Text;
        Assert.Contains("size: 22.5 x 14 x 9 ft measured", text, StringComparison.Ordinal);
        Assert.Contains("at: 6 x 6.25 x 4 ft", text, StringComparison.Ordinal);
        Assert.Contains("at: 2 m x 2.5 m x 0.8 m", text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_switch_that_stands_in_a_room_is_moved_in_its_design_only()
    {
        await using var site = await TwoDesks();
        var page = await Try(site, await site.Page(Office), ("sw-1/at|0", "4.1"));
        Assert.Contains("at of sw-1 of switches", Said(page), StringComparison.Ordinal);
        Assert.NotEmpty(page.QuerySelectorAll("table.effects tbody tr"));
        var grip = page.QuerySelector("[data-grip='sw-1/at']")!;
        Assert.NotEqual(grip.GetAttribute("data-x"), (await site.Page(Office)).QuerySelector("[data-grip='sw-1/at']")!.GetAttribute("data-x"));
    }

    [Fact]
    public async Task Two_people_move_different_things_and_both_are_kept_but_the_same_thing_is_shown_with_both()
    {
        await using var site = await DeskSite.WithBarn();
        var other = site.Another();
        var (mine, theirs) = (await site.Page(Reception), await other.Page(DeskSite.Barn + "/drawings/rooms?space=kennels"));
        await Send(other, await Try(other, theirs, ("listeners/boxes/at|0", "4")), "save");
        mine = await Try(site, mine, (DeskAlong, "3"));
        Assert.Contains("Somebody saved revision 2 meanwhile", Words.Of(mine), StringComparison.Ordinal);
        Assert.Contains("both are kept: at of boxes", Words.Of(await Send(site, mine, "save")), StringComparison.Ordinal);

        (mine, theirs) = (await site.Page(Reception), await other.Page(Reception));
        await Send(other, await Try(other, theirs, (DeskAlong, "3.6")), "save");
        var clash = await Send(site, await Try(site, mine, (DeskAlong, "3.2")), "save", HttpStatusCode.Conflict);
        Assert.Contains("3.2 x 1.2 x 1.2 m 3.6 x 1.2 x 1.2 m", Words.Of(clash.QuerySelector("[role=alert] table")), StringComparison.Ordinal);
        Assert.Contains("Saved as revision 5.", Words.Of(await Send(site, clash, "save")), StringComparison.Ordinal);
        Assert.Contains("at: 3.2 x 1.2 x 1.2 m", site.Store.Read("cobnut-barn-animal-doctors", 5)!.Text, StringComparison.Ordinal);
    }

    // The sums of a move take no longer than a person sees as at once.
    [Fact]
    public async Task A_move_is_worked_out_within_a_tenth_of_a_second()
    {
        await using var site = await DeskSite.WithBarn();
        var page = await site.Page(Reception);
        var times = new List<double>();
        for (var move = 0; move < 40; move++)
        {
            var clock = Stopwatch.StartNew();
            await Try(site, page, (DeskAlong, (1 + move * 0.1).ToString("0.#", CultureInfo.InvariantCulture)), ("part", "yes"));
            times.Add(clock.Elapsed.TotalMilliseconds);
        }

        times.Sort();
        TestContext.Current.TestOutputHelper?.WriteLine($"a move of examples/barn-vets: quickest {times[0]:0.0} ms, median {times[20]:0.0} ms, slowest {times[^1]:0.0} ms");
        // The quickest, for the others tell what else this machine does; even that says little while all tests run at once. The median is a bar of the bench.
        Assert.True(times[0] < (Long.On ? 100 : 1000), $"quickest {times[0]:0.0} ms");
    }

    [Fact]
    public async Task A_cord_goes_to_a_free_port_and_its_range_falls_apart()
    {
        await using var site = await DeskSite.WithBarn();
        var page = await Try(site, await site.Page(Ports), ("cord/K-14", "sw-1/23"));
        Assert.Contains("K-14 of patch of as-offered of designs: sw-1/23, new", Said(page), StringComparison.Ordinal);
        await Send(site, page, "save");
        var text = site.Store.Read("cobnut-barn-animal-doctors", 2)!.Text;
        Assert.DoesNotContain("K-14..K-15", text, StringComparison.Ordinal);
        Assert.Contains("K-14: sw-1/23\n", text, StringComparison.Ordinal);
        Assert.Contains("K-15: sw-1/7\n", text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_taken_port_is_refused_and_the_two_can_be_swapped()
    {
        await using var site = await DeskSite.WithBarn();
        var page = await Try(site, await site.Page(Ports), [("cord/K-07", "sw-1/5")], HttpStatusCode.UnprocessableEntity);
        var row = Field(page, "cord/K-07").Closest("tr")!;
        Assert.Contains("K-21 (door) is on sw-1/5 already; a port takes one cord.", Words.Of(row), StringComparison.Ordinal);
        var swap = row.QuerySelector<IHtmlButtonElement>("button")!;
        Assert.Equal("Swap K-07 and K-21", Words.Of(swap));
        page = await Send(site, page, swap.Value);
        Assert.Equal(("sw-1/5", "sw-1/1"), (Field(page, "cord/K-07").Value, Field(page, "cord/K-21").Value));
        await Send(site, page, "save");
        var text = site.Store.Read("cobnut-barn-animal-doctors", 2)!.Text;
        Assert.Contains("K-07: sw-1/5 ", text, StringComparison.Ordinal);
        Assert.Contains("K-21: sw-1/1\n", text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("cord/K-07", "sw-1/25", "sw-1/25")]
    [InlineData("cord/K-07", "sw-1/77", "wren-b")]
    [InlineData("cord/K-07", "sw-9/1", "sw-9")]
    [InlineData("cord/K-07", "the first", "port")]
    [InlineData("unit/sw-1", "5", "manager")]
    [InlineData("unit/sw-1", "13", "12 U")]
    [InlineData("unit/sw-1", "top", "top")]
    public async Task A_port_or_unit_that_cannot_be_is_refused_with_words(string field, string typed, string said)
    {
        await using var site = await DeskSite.WithBarn();
        var page = await Try(site, await site.Page(Ports), [(field, typed)], HttpStatusCode.UnprocessableEntity);
        Assert.Contains(said, Words.Of(Field(page, field).Closest("tr")!.QuerySelector(".wrong")), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Units_move_in_the_rack_each_where_it_is_written()
    {
        await using var site = await DeskSite.WithBarn();
        // A switch of the design, one of the survey's fittings, and in a design that is like another a fitting that is written there.
        var page = await Send(site, await Try(site, await site.Page(Ports), ("unit/sw-1", "8"), ("unit/shelf", "10"), ("unit/panel-2", "9")), "save");
        Assert.Contains("Saved as revision 2.", Words.Of(page), StringComparison.Ordinal);
        page = await Send(site, await Try(site, await site.Page(Ports + "?design=mended"), ("unit/sw-1", "7"), ("unit/panel-1", "12"), ("cord/K-07", "")), "save");
        Assert.Contains("Saved as revision 3.", Words.Of(page), StringComparison.Ordinal);
        var text = site.Store.Read("cobnut-barn-animal-doctors", 3)!.Text;
        Assert.Contains("sw-1: {model: wren-b, supply: small, in: A, unit: 8, fed-by: ups-1}", text, StringComparison.Ordinal);
        Assert.Contains("shelf: {kind: shelf, in: A, unit: 10,", text, StringComparison.Ordinal);
        var mended = text[text.IndexOf("\n  mended:", StringComparison.Ordinal)..];
        Assert.Contains("sw-1: {model: redshank, supply: large, priority: {phone-1..phone-5: high}, unit: 7}", mended, StringComparison.Ordinal);
        Assert.Contains("panel-1: {kind: panel, in: A, unit: 12, height: 1 U, places: 24, depth: 95 mm, weight: 1.1 kg, price: 43 EUR}", mended, StringComparison.Ordinal);
        Assert.Contains("K-07: none", mended, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Every_thing_on_a_drawing_has_its_fields_and_every_port_its_place()
    {
        await using var site = await DeskSite.WithBarn();
        foreach (var address in (string[])[Reception, DeskSite.Barn + "/drawings/rooms?space=kennels", Ports])
        {
            var page = await site.Page(address);
            Assert.NotEmpty(page.QuerySelectorAll("[data-grip]"));
            Assert.All(page.QuerySelectorAll("[data-grip]"), grip => Assert.NotNull(page.QuerySelector(grip.GetAttribute("href")!)));
        }

        Assert.Equal(26, (await site.Page(Ports)).QuerySelectorAll("[data-place]").Length);
    }

    [Fact]
    public async Task A_room_that_is_not_there_is_no_page()
    {
        await using var site = await DeskSite.WithBarn();
        Assert.Contains("There is no room to draw here", Words.Of(await site.Page(DeskSite.Barn + "/drawings/rooms?space=loft")), StringComparison.Ordinal);
    }

    private static async Task<DeskSite> TwoDesks()
    {
        var site = await DeskSite.Open();
        site.Import(File.ReadAllText(Repository.PathOf("tests/Headroom.Documents.Tests/Drawings/room-job.yaml")));
        return site;
    }

    private static async Task<DeskSite> Room(string survey)
    {
        var site = await DeskSite.Open();
        site.Import($"headroom: 1\njob: Room\nsurvey:\n{survey}\n  endpoints:\n    phone-1: {{model: pipit, near: office}}\ndesigns:\n  today:\n    switches: {{sw-1: {{model: wren-b, in: office}}}}\n    patch: {{phone-1: sw-1/1}}\n");
        return site;
    }

    private static Task<IHtmlDocument> Try(DeskSite site, IHtmlDocument page, params (string Field, string Value)[] typed) => Try(site, page, typed, HttpStatusCode.OK);

    private static Task<IHtmlDocument> Try(DeskSite site, IHtmlDocument page, (string Field, string Value)[] typed, HttpStatusCode expected) => site.Fill(page, DeskSite.AnyJob, fields =>
    {
        foreach (var (field, value) in typed)
            fields[field] = value;
        fields["do"] = "try";
    }, expected);

    private static Task<IHtmlDocument> Send(DeskSite site, IHtmlDocument page, string what, HttpStatusCode expected = HttpStatusCode.OK) => site.Fill(page, DeskSite.AnyJob, fields => fields["do"] = what, expected);

    private static string Said(IHtmlDocument page) => Words.Of(page.QuerySelector("[data-said]"));

    private static IHtmlInputElement Field(IHtmlDocument page, string name) => page.QuerySelectorAll<IHtmlInputElement>("input").First(input => input.Name == name);

    private static IHtmlButtonElement Button(IHtmlDocument page, string value) => page.QuerySelectorAll<IHtmlButtonElement>("button").First(button => button.Value == value);
}

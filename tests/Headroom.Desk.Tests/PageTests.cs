using System.Net;

namespace Headroom.Desk.Tests;

public sealed class PageTests
{
    public static TheoryData<string, string> Pages => new()
    {
        { "/", "short phone, back after an outage" },
        { "/new", "From a few questions" },
        { "/catalogue?kind=switches&q=wren", "wren-b" },
        { DeskSite.Barn, "Short: after an outage" },
        { DeskSite.Barn + "?design=mended", "design mended" },
        { DeskSite.Barn + "/entry?id=power/sw-1/watts", "IEEE Std 802.3" },
        { DeskSite.Barn + "/survey", "K-08..K-09" },
        { DeskSite.Barn + "/survey?part=endpoints", "field-link" },
        { DeskSite.Barn + "/survey?part=spaces", "kennels" },
        { DeskSite.Barn + "/designs", "redshank" },
        { DeskSite.Barn + "/drawings", "Rack A from its front and its side" },
        { DeskSite.Barn + "/drawings/rooms", "Plan of reception" },
        { DeskSite.Barn + "/drawings/ports", "Rack A from its front" },
        { DeskSite.Barn + "/drawings/restart", "phone-1" },
        { DeskSite.Barn + "/remedies", "Look for remedies" },
        { DeskSite.Barn + "/proposals", "Let the planner propose" },
        { DeskSite.Barn + "/turning", "Look where the answer changes" },
        { DeskSite.Barn + "/enquiry", "Write the note" },
        { DeskSite.Barn + "/years", "What is due" },
        { DeskSite.Barn + "/units?design=mended", "Choose mended" },
        { DeskSite.Barn + "/units?design=mended&part=uplinks", "as in as-offered" },
        { DeskSite.Barn + "/readings", "expected" },
        { DeskSite.Barn + "/papers", "Handover pack" },
        { DeskSite.Barn + "/revisions", "the example" },
    };

    [Theory, MemberData(nameof(Pages))]
    public async Task A_page_says_what_it_is_for_and_needs_nothing_from_elsewhere(string address, string said)
    {
        await using var site = await DeskSite.WithBarn();
        using var answer = await site.Get(address);
        var page = await site.Page(address);
        Assert.Contains(said, Words.Of(page.Body), StringComparison.Ordinal);
        Assert.Contains("default-src 'none'", answer.Headers.GetValues("Content-Security-Policy").First(), StringComparison.Ordinal);
        Assert.Equal("en", page.DocumentElement.GetAttribute("lang"));
        Assert.Single(page.QuerySelectorAll("h1"));
        // A strict policy lets none of these work: no style or script on the spot, nothing from other places.
        Assert.Empty(page.QuerySelectorAll("[style], style, script:not([src]), [onclick], iframe, object"));
        Assert.All(page.QuerySelectorAll("[src], link[href]"), element => Assert.StartsWith("/own/", element.GetAttribute("src") ?? element.GetAttribute("href"), StringComparison.Ordinal));
        Assert.All(page.QuerySelectorAll("a[href], form[action]"), element => Assert.Matches("^[/#]", element.GetAttribute("href") ?? element.GetAttribute("action")!));
    }

    [Theory, MemberData(nameof(Pages))]
    public async Task Everything_that_is_filled_in_has_a_name_for_those_who_do_not_see(string address, string said)
    {
        await using var site = await DeskSite.WithBarn();
        var page = await site.Page(address);
        Assert.NotEmpty(said);
        Assert.All(page.QuerySelectorAll("input:not([type=hidden]), select"), input => Assert.True(
            input.HasAttribute("aria-label") || input.Closest("label") is not null || page.QuerySelector($"label[for='{input.Id}']") is not null, input.OuterHtml));
        Assert.All(page.QuerySelectorAll("table"), table => Assert.True(table.QuerySelector("thead th[scope=col], tbody th[scope=row]") is not null, table.OuterHtml[..80]));
        Assert.Equal(page.QuerySelectorAll("[id]").Length, page.QuerySelectorAll("[id]").Select(one => one.Id).Distinct().Count());
    }

    // Every link of every sheet leads somewhere.
    [Fact]
    public async Task Every_link_leads_to_a_page()
    {
        await using var site = await DeskSite.WithBarn();
        var (seen, open) = (new HashSet<string>(), new Queue<string>(["/"]));
        while (open.TryDequeue(out var address))
        {
            var page = await site.Page(address);
            foreach (var link in page.QuerySelectorAll("a[href^='/']").Select(link => link.GetAttribute("href")!).Where(link => !link.EndsWith("/file?revision=1", StringComparison.Ordinal)))
            {
                // Of the entries a few are enough: one test opens all.
                if (seen.Add(link) && (!link.Contains("/entry?", StringComparison.Ordinal) || seen.Count % 17 == 0) && !link.Contains("also=", StringComparison.Ordinal))
                    open.Enqueue(link);
            }
        }

        Assert.True(seen.Count > 40, $"{seen.Count} links");
    }

    [Fact]
    public async Task Every_figure_of_the_ledger_opens()
    {
        await using var site = await DeskSite.WithBarn();
        var ledger = await site.Page(DeskSite.Barn + "?all=1");
        var links = ledger.QuerySelectorAll("a[href*='/entry?']").Select(link => link.GetAttribute("href")!).ToList();
        Assert.True(links.Count > 200, $"{links.Count} links");
        foreach (var link in links.Where((_, at) => Long.On || at % 12 == 0))
            Assert.NotNull((await site.Page(link)).QuerySelector(".working"));
    }

    [Fact]
    public async Task The_ledger_says_what_the_command_says()
    {
        await using var site = await DeskSite.WithBarn();
        var page = await site.Page(DeskSite.Barn);
        Assert.Contains("240 entries: 4 short, 4 tight, 230 clear, 2 unknown", Words.Of(page), StringComparison.Ordinal);
        var first = page.QuerySelector("table.ledger tbody tr")!;
        Assert.Equal("phone back after an outage 5 0 -5 ✕ short", Words.Of(first).Replace("asked 5, there is 0", "", StringComparison.Ordinal).Replace("  ", " ", StringComparison.Ordinal));
        Assert.Equal("Cobnut Barn Animal Doctors", Words.Of(page.QuerySelector(".block .wide dd")));
    }

    [Fact]
    public async Task Jobs_are_found_by_any_word_of_what_their_line_says()
    {
        await using var site = await DeskSite.WithBarn();
        Assert.Contains("Cobnut", Words.Of(await site.Page("/?q=short+cobnut")), StringComparison.Ordinal);
        Assert.Contains("No job has these words", Words.Of(await site.Page("/?q=school")), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_first_run_offers_a_job_to_begin_and_the_example()
    {
        await using var site = await DeskSite.Open();
        var page = await site.Page("/");
        Assert.Contains("There is no job yet", Words.Of(page), StringComparison.Ordinal);
        var job = await site.Fill(page, "/example", _ => { });
        Assert.Contains("Cobnut Barn", Words.Of(job), StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_job_file_comes_out_byte_for_byte_and_not_as_a_page()
    {
        await using var site = await DeskSite.WithBarn();
        using var answer = await site.Get(DeskSite.Barn + "/file");
        Assert.Equal(File.ReadAllBytes(Repository.PathOf("examples/barn-vets/job.yaml")), await answer.Content.ReadAsByteArrayAsync(TestContext.Current.CancellationToken));
        Assert.Equal("attachment", answer.Content.Headers.ContentDisposition!.DispositionType);
        Assert.Equal("nosniff", answer.Headers.GetValues("X-Content-Type-Options").Single());
    }

    [Theory, InlineData("/own/sheet.css", "text/css"), InlineData("/own/desk.js", "text/javascript"), InlineData("/own/move.js", "text/javascript"), InlineData("/own/plain.ttf", "font/ttf")]
    public async Task Own_files_are_kept_by_the_browser(string address, string type)
    {
        await using var site = await DeskSite.Open();
        using var answer = await site.Get(address);
        Assert.Equal((HttpStatusCode.OK, type), (answer.StatusCode, answer.Content.Headers.ContentType!.MediaType));
        Assert.Contains("immutable", answer.Headers.CacheControl!.ToString(), StringComparison.Ordinal);
    }
}

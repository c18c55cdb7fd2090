using Deque.AxeCore.Playwright;
using Headroom.Store;
using Microsoft.Playwright;

namespace Headroom.Browser.Tests;

public sealed class DeskTests(Browser browser) : IClassFixture<Browser>
{
    private static readonly string[] Addresses = ["/", "/new", "/catalogue?kind=fans", Visit.Barn, Visit.Barn + "/entry?id=power/sw-1/watts", Visit.Barn + "/survey", Visit.Barn + "/survey?part=spaces", Visit.Barn + "/designs", Visit.Barn + "/drawings", Visit.Barn + "/drawings/rooms", Visit.Barn + "/drawings/ports", Visit.Barn + "/drawings/restart", Visit.Barn + "/remedies", Visit.Barn + "/proposals", Visit.Barn + "/turning", Visit.Barn + "/years", Visit.Barn + "/units?design=mended", Visit.Barn + "/readings", Visit.Barn + "/papers", Visit.Barn + "/revisions?a=1&b=1"];

    // From nothing to papers: a person who never saw it goes by what the pages say.
    [Theory, InlineData(1240, true), InlineData(390, true), InlineData(1240, false)]
    public async Task A_job_goes_from_a_few_questions_to_a_paper(int width, bool script)
    {
        await using var visit = await browser.Open(width, script: script);
        var page = visit.Page;
        await page.GotoAsync("/");
        await page.GetByRole(AriaRole.Link, new() { Name = "A new job" }).ClickAsync();
        await page.GetByLabel("Name of the job").FillAsync("Fern Office");
        await page.GetByLabel("How many people work at a screen?").First.FillAsync("4");
        await page.GetByLabel("How many telephones?").First.FillAsync("3");
        await page.GetByRole(AriaRole.Button, new() { Name = "Begin" }).ClickAsync();
        await page.GetByRole(AriaRole.Link, new() { Name = "Let the planner propose one." }).ClickAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Let the planner propose" }).ClickAsync();
        // The page goes on by itself, with and without script, until there is something to choose.
        await page.GetByLabel("as design").First.FillAsync("first", new() { Timeout = 90_000 });
        await page.GetByRole(AriaRole.Button, new() { Name = "Put it into the job" }).First.ClickAsync();
        await Assertions.Expect(page.Locator("main")).ToContainTextAsync("Nothing that is known is short or tight");
        await page.GetByRole(AriaRole.Link, new() { Name = "8 Papers" }).ClickAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Make and keep them" }).ClickAsync();
        var paper = page.GetByRole(AriaRole.Link, new() { Name = "What is left of every limit" });
        await Assertions.Expect(paper).ToBeVisibleAsync(new() { Timeout = 90_000 });
        var download = await page.RunAndWaitForDownloadAsync(() => paper.ClickAsync());
        Assert.Equal("limits.pdf", download.SuggestedFilename);
    }

    [Fact]
    public async Task Rows_of_a_spreadsheet_are_pasted_into_the_survey_and_the_keys_go_from_row_to_row()
    {
        await using var visit = await browser.Open();
        var page = await visit.Begin();
        await page.GotoAsync(Visit.Barn + "/survey");
        var first = page.GetByLabel("length of K-01");
        await first.EvaluateAsync("""cell => { const data = new DataTransfer(); data.setData('text/plain', '15 m\tcat6a-23\n16 m\tcat6a-23\n'); cell.dispatchEvent(new ClipboardEvent('paste', { clipboardData: data, bubbles: true, cancelable: true })); }""");
        await Assertions.Expect(page.GetByLabel("cable of K-02")).ToHaveValueAsync("cat6a-23");
        await first.FocusAsync();
        await page.Keyboard.PressAsync("ArrowDown");
        await Assertions.Expect(page.GetByLabel("length of K-02")).ToBeFocusedAsync();
        await page.Keyboard.PressAsync("Enter");
        await Assertions.Expect(page.GetByLabel("length of K-03")).ToBeFocusedAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Save" }).ClickAsync();
        await Assertions.Expect(page.Locator("main")).ToContainTextAsync("Saved as revision 2");
        await Assertions.Expect(page.GetByLabel("length of K-02")).ToHaveValueAsync("16 m");
        Assert.Empty(visit.Said);
    }

    [Fact]
    public async Task Two_browsers_at_one_job_lose_nothing()
    {
        await using var visit = await browser.Open();
        var mine = await visit.Begin();
        var theirs = await visit.Context.NewPageAsync();
        await Task.WhenAll(mine.GotoAsync(Visit.Barn + "/survey"), theirs.GotoAsync(Visit.Barn + "/survey"));
        await theirs.GetByLabel("length of K-01").FillAsync("16 m");
        await theirs.GetByRole(AriaRole.Button, new() { Name = "Save" }).ClickAsync();
        await mine.GetByLabel("length of K-01").FillAsync("15 m");
        await mine.GetByRole(AriaRole.Button, new() { Name = "Save" }).ClickAsync();
        await Assertions.Expect(mine.GetByRole(AriaRole.Alert)).ToContainTextAsync("Nothing of yours is lost");
        await mine.GetByRole(AriaRole.Button, new() { Name = "Save" }).ClickAsync();
        await Assertions.Expect(mine.GetByLabel("length of K-01")).ToHaveValueAsync("15 m");
        using var store = JobStore.Open(new StorePlace(visit.Folder), TimeProvider.System);
        Assert.Equal(3, store.Find("cobnut-barn-animal-doctors")!.Head);
    }

    [Theory, InlineData(ColorScheme.Light), InlineData(ColorScheme.Dark)]
    public async Task No_page_has_a_fault_that_shuts_somebody_out(ColorScheme scheme)
    {
        await using var visit = await browser.Open(scheme: scheme);
        var page = await visit.Begin();
        var faults = new List<string>();
        // The rules take ten seconds on a page of a thousand cells: of two schemes the second is about colours, and a few pages show all of them.
        foreach (var address in scheme == ColorScheme.Light || Long.On ? Addresses : ["/", Visit.Barn, Visit.Barn + "/survey?part=spaces", Visit.Barn + "/drawings/rooms", Visit.Barn + "/papers"])
        {
            await page.GotoAsync(address);
            var result = await page.RunAxe();
            faults.AddRange(result.Violations.Where(fault => fault.Impact is "serious" or "critical").Select(fault => $"{address}: {fault.Id}: {fault.Help}: {fault.Nodes[0].Html}"));
        }

        Assert.Equal("", string.Join('\n', faults));
        Assert.Empty(visit.Said);
    }

    [Theory, InlineData(320), InlineData(768), InlineData(1920)]
    public async Task No_page_is_wider_than_the_window(int width)
    {
        await using var visit = await browser.Open(width);
        var page = await visit.Begin();
        var wide = new List<string>();
        foreach (var address in Addresses)
        {
            await page.GotoAsync(address);
            if (await page.EvaluateAsync<int>("document.documentElement.scrollWidth") is var needed && needed > width)
                wide.Add($"{address} needs {needed}");
        }

        Assert.Equal("", string.Join('\n', wide));
    }

    [Fact]
    public async Task A_sheet_prints_without_what_is_for_the_screen_only()
    {
        await using var visit = await browser.Open();
        var page = await visit.Begin();
        await page.EmulateMediaAsync(new() { Media = Media.Print });
        await Assertions.Expect(page.Locator("nav.sheets")).ToBeHiddenAsync();
        await Assertions.Expect(page.Locator(".block")).ToBeVisibleAsync();
        Assert.True((await page.PdfAsync(new() { Format = "A4" })).Length > 10_000);
    }

    [Fact]
    public async Task With_the_keyboard_alone_one_comes_to_the_working_of_a_figure()
    {
        await using var visit = await browser.Open();
        var page = await visit.Begin();
        // A key that comes before the page takes keys is lost, and nothing has the focus then.
        await page.BringToFrontAsync();
        for (var pressed = 0; pressed < 20 && await page.EvaluateAsync<bool>("document.activeElement === document.body"); pressed++)
        {
            await page.Keyboard.PressAsync("Tab");
            await page.WaitForTimeoutAsync(100);
        }

        Assert.Equal("To the sheet", await page.EvaluateAsync<string>("document.activeElement.textContent"));
        for (var tabs = 0; tabs < 40 && !await page.EvaluateAsync<bool>("document.activeElement.href?.includes('/entry?') ?? false"); tabs++)
            await page.Keyboard.PressAsync("Tab");
        await page.Keyboard.PressAsync("Enter");
        await Assertions.Expect(page.Locator(".working")).ToBeVisibleAsync();
    }
}

using Headroom.Desk;
using Headroom.JobFiles.Changes;
using Microsoft.Playwright;

namespace Headroom.Browser.Tests;

public sealed class FromPaperTests(Browser browser) : IClassFixture<Browser>
{
    private const float Minutes = 60_000;

    // In the order in which one names another.
    private static readonly string[] Parts = ["spaces", "racks", "pathways", "listeners", "drops", "endpoints"];

    // The survey of the example is what stands on the paper; every cell of it is typed, and nothing is imported.
    [Fact]
    public async Task The_example_site_goes_from_paper_to_printed_papers()
    {
        await using var visit = await browser.Open(height: 1000);
        var (page, paper) = (visit.Page, Paper());
        await page.GotoAsync("/");
        await page.GetByRole(AriaRole.Link, new() { Name = "A new job" }).ClickAsync();
        await page.GetByLabel("Name of the job").FillAsync("The barn, from paper");
        await page.GetByLabel("How many people work at a screen?").First.FillAsync("1");
        await page.GetByRole(AriaRole.Button, new() { Name = "Begin" }).ClickAsync();
        foreach (var part in Parts)
            await Enter(page, JobTable.Of(paper, part), part);

        // A design that is clear.
        await page.GetByRole(AriaRole.Link, new() { Name = "6 Proposals" }).ClickAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Let the planner propose" }).ClickAsync();
        await page.GetByLabel("as design").First.FillAsync("first", new() { Timeout = 4 * Minutes });
        await Assertions.Expect(page.Locator(".drawing svg").First).ToBeVisibleAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Put it into the job" }).First.ClickAsync();
        await Assertions.Expect(page.Locator("main")).ToContainTextAsync(": 0 short");

        // Why: any line opens to its working.
        await page.Locator(".ledger tbody th a").First.ClickAsync();
        await Assertions.Expect(page.Locator(".working")).ToContainTextAsync("Where the figures come from");
        await page.GetByRole(AriaRole.Link, new() { Name = "Back to the ledger" }).ClickAsync();

        // On paper.
        await page.GetByRole(AriaRole.Link, new() { Name = "8 Papers" }).ClickAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Make and keep them" }).ClickAsync();
        var link = page.GetByRole(AriaRole.Link, new() { Name = "What is left of every limit" });
        await Assertions.Expect(link).ToBeVisibleAsync(new() { Timeout = 2 * Minutes });
        var download = await page.RunAndWaitForDownloadAsync(() => link.ClickAsync());
        Assert.Equal("limits.pdf", download.SuggestedFilename);
        await using var stream = await download.CreateReadStreamAsync();
        var head = new byte[5];
        await stream.ReadExactlyAsync(head, TestContext.Current.CancellationToken);
        Assert.Equal("%PDF-"u8, head);
    }

    private static async Task Enter(IPage page, JobTable paper, string part)
    {
        await page.GetByRole(AriaRole.Link, new() { Name = "2 Survey" }).ClickAsync();
        await page.GetByRole(AriaRole.Link, new() { Name = part, Exact = true }).ClickAsync();
        await page.GetByRole(AriaRole.Link, new() { Name = "Room for 30 new rows" }).ClickAsync();
        foreach (var column in paper.Rows.SelectMany(row => row.Cells.Keys).Distinct())
        {
            var more = page.GetByRole(AriaRole.Link, new() { Name = column, Exact = true });
            if (await page.GetByRole(AriaRole.Columnheader, new() { Name = column, Exact = true }).CountAsync() == 0)
                await more.ClickAsync();
        }

        var fresh = 0;
        foreach (var row in paper.Rows)
        {
            var there = await page.GetByRole(AriaRole.Rowheader, new() { Name = row.Name, Exact = true }).CountAsync() > 0;
            var (of, at) = there ? (row.Name, 0) : ("a new row", fresh++);
            if (!there)
                await page.GetByLabel("name of a new row", new() { Exact = true }).Nth(at).FillAsync(row.Name);
            foreach (var (column, value) in row.Cells)
                await page.GetByLabel($"{column} of {of}", new() { Exact = true }).Nth(at).FillAsync(value);
        }

        // What the few questions put in, and is not on the paper.
        if (part == "endpoints")
            await page.GetByLabel("take 1 x workstation out").CheckAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Save" }).ClickAsync();
        await Assertions.Expect(page.Locator("main")).ToContainTextAsync("Saved as revision");
    }

    private static string Paper()
    {
        using var stream = typeof(DeskHost).Assembly.GetManifestResourceStream("example.yaml")!;
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd();
    }
}

using Microsoft.Playwright;

namespace Headroom.Browser.Tests;

/// <summary>The main pages compared with pictures that were looked at. Letters are the desk's own, so that only another browser draws them otherwise.</summary>
public sealed class PictureTests(Browser browser) : IClassFixture<Browser>
{
    // Small pictures: what is compared is where things stand and how dark they are, not the shape of letters.
    private const float Scale = 0.5f;

    // Of 255, of the worst square of eight points: an edge that is smoothed otherwise counts a few, a word that is not there many.
    private const double Tolerance = 16;

    [Theory]
    [InlineData("jobs", "/")]
    [InlineData("ledger", Visit.Barn)]
    [InlineData("survey", Visit.Barn + "/survey?part=listeners")]
    [InlineData("plan", Visit.Barn + "/drawings/rooms?space=reception")]
    [InlineData("faces", Visit.Barn + "/drawings/ports")]
    [InlineData("restart", Visit.Barn + "/drawings/restart")]
    [InlineData("designs", Visit.Barn + "/designs")]
    [InlineData("proposals", Visit.Barn + "/proposals")]
    [InlineData("papers", Visit.Barn + "/papers")]
    [InlineData("ledger", Visit.Barn, "dark")]
    public async Task Pages_look_as_they_were_accepted(string name, string address, string way = "light")
    {
        foreach (var (width, height, size) in ((int, int, string)[])[(1240, 1500, "desktop"), (390, 1500, "phone")])
        {
            await using var visit = await browser.Open(width, height, scheme: way == "dark" ? ColorScheme.Dark : ColorScheme.Light, scale: Scale);
            var page = await visit.Begin();
            await page.GotoAsync(address);
            await page.EvaluateAsync("document.fonts.ready");
            Agrees($"{name}-{size}{(way == "dark" ? "-dark" : "")}.png", await page.ScreenshotAsync(new() { Animations = ScreenshotAnimations.Disabled }));
        }
    }

    [Theory]
    [InlineData("plan-moved", Visit.Barn + "/drawings/rooms?space=reception", "across of desk, m", "4.1")]
    [InlineData("plan-refused", Visit.Barn + "/drawings/rooms?space=reception", "along of desk, m", "9")]
    [InlineData("faces-moved", Visit.Barn + "/drawings/ports", "port of K-12", "sw-1/26")]
    [InlineData("faces-refused", Visit.Barn + "/drawings/ports", "port of K-12", "sw-1/5")]
    public async Task Drawings_look_as_they_were_accepted_after_a_move(string name, string address, string field, string value)
    {
        foreach (var (width, size) in ((int, string)[])[(1240, "desktop"), (390, "phone")])
        {
            await using var visit = await browser.Open(width, 1700, script: false, scale: Scale);
            var page = await visit.Begin();
            await page.GotoAsync(address);
            await page.GetByLabel(field, new() { Exact = true }).FillAsync(value);
            await page.GetByLabel(field, new() { Exact = true }).PressAsync("Enter");
            await Assertions.Expect(page.Locator("[data-said]")).Not.ToHaveTextAsync("Nothing is moved.");
            Agrees($"{name}-{size}.png", await page.ScreenshotAsync(new() { Animations = ScreenshotAnimations.Disabled }));
        }
    }

    [Fact]
    public async Task A_word_that_is_not_there_is_seen()
    {
        await using var visit = await browser.Open(390, 700, scale: Scale);
        var page = await visit.Begin();
        var whole = GrayPicture.Read(await page.ScreenshotAsync());
        Assert.Equal(0, whole.Apart(GrayPicture.Read(await page.ScreenshotAsync())));
        await page.EvaluateAsync("document.querySelector('h1').textContent = ''");
        Assert.True(whole.Apart(GrayPicture.Read(await page.ScreenshotAsync())) > Tolerance);
    }

    private static void Agrees(string name, byte[] png)
    {
        var file = Repository.PathOf($"tests/Headroom.Browser.Tests/Accepted/{name}");
        if (Golden.Accepting)
            File.WriteAllBytes(file, png);
        Assert.True(File.Exists(file), $"{file} is missing: HEADROOM_ACCEPT=1 writes it; look at it before it is kept.");
        var apart = GrayPicture.Read(File.ReadAllBytes(file)).Apart(GrayPicture.Read(png));
        Assert.True(apart <= Tolerance, $"{name}: {apart:0} of 255 apart at the worst spot; HEADROOM_ACCEPT=1 renews {file}; look at it before it is kept.");
    }
}

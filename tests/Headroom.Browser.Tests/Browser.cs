using Headroom.Desk;
using Headroom.Store;
using Microsoft.AspNetCore.Builder;
using Microsoft.Playwright;

namespace Headroom.Browser.Tests;

/// <summary>One real browser for all tests, the one that the system has, and a desk for each.</summary>
public sealed class Browser : IAsyncLifetime
{
    private static readonly string[] Names = ["chromium", "chromium-browser", "google-chrome"];

    private IPlaywright? _driver;
    private IBrowser? _browser;

    public async ValueTask InitializeAsync()
    {
        if (Path() is not { } path)
            return;
        _driver = await Playwright.CreateAsync();
        _browser = await _driver.Chromium.LaunchAsync(new()
        {
            ExecutablePath = path,
            Args = ["--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking", "--disable-component-update", "--disable-sync"],
        });
    }

    /// <summary>A page at a desk of its own.</summary>
    internal async Task<Visit> Open(int width = 1240, int height = 900, bool script = true, ColorScheme scheme = ColorScheme.Light, bool touch = false, float scale = 1)
    {
        Assert.SkipWhen(_browser is null, "no browser: install chromium");
        var folder = Directory.CreateTempSubdirectory("headroom-browser-").FullName;
        var app = DeskHost.Build(new DeskSettings(new StorePlace(folder), new Uri("http://127.0.0.1:0"), "R. Hollis") { Clock = new SetClock() });
        await app.StartAsync(TestContext.Current.CancellationToken);
        var context = await _browser.NewContextAsync(new() { ViewportSize = new() { Width = width, Height = height }, JavaScriptEnabled = script, ColorScheme = scheme, HasTouch = touch, DeviceScaleFactor = scale, BaseURL = app.Urls.First() });
        return new(folder, app, context, await context.NewPageAsync());
    }

    public async ValueTask DisposeAsync()
    {
        if (_browser is not null)
            await _browser.DisposeAsync();
        _driver?.Dispose();
    }

    // The day stands, so that a page looks the same tomorrow; seconds go on.
    private sealed class SetClock : TimeProvider
    {
        private static readonly DateTimeOffset Day = new(2026, 11, 25, 9, 0, 0, TimeSpan.Zero);
        private readonly long _begun = Environment.TickCount64;

        public override TimeZoneInfo LocalTimeZone => TimeZoneInfo.Utc;

        public override DateTimeOffset GetUtcNow() => Day.AddMilliseconds(Environment.TickCount64 - _begun);
    }

    private static string? Path() => (Environment.GetEnvironmentVariable("PATH") ?? "").Split(System.IO.Path.PathSeparator)
        .SelectMany(folder => Names.Select(name => System.IO.Path.Combine(folder, name))).FirstOrDefault(File.Exists);
}

/// <summary>A page with its desk.</summary>
internal sealed record Visit(string Folder, WebApplication App, IBrowserContext Context, IPage Page) : IAsyncDisposable
{
    public const string Barn = "/jobs/cobnut-barn-animal-doctors";

    private readonly List<string> _said = [];

    /// <summary>What the browser complained about: nothing, on a page that is right.</summary>
    public IReadOnlyList<string> Said => _said;

    public async Task<IPage> Begin()
    {
        Page.Console += (_, message) =>
        {
            if (message.Type is "error" or "warning")
                _said.Add(message.Text);
        };
        Page.PageError += (_, error) => _said.Add(error);
        await Page.GotoAsync("/");
        await Page.GetByRole(AriaRole.Button, new() { Name = "Put the example in" }).ClickAsync();
        return Page;
    }

    public async ValueTask DisposeAsync()
    {
        await Context.DisposeAsync();
        await App.DisposeAsync();
        Directory.Delete(Folder, recursive: true);
    }
}

using System.Net;
using AngleSharp.Dom;
using AngleSharp.Html.Dom;
using AngleSharp.Html.Parser;
using Headroom.Store;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.TestHost;

namespace Headroom.Desk.Tests;

/// <summary>A desk in memory with a folder of its own, and a browser that follows links and fills forms, without script.</summary>
internal sealed class DeskSite : IAsyncDisposable
{
    public const string Barn = "/jobs/cobnut-barn-animal-doctors";

    /// <summary>How the addresses of all jobs begin.</summary>
    public const string AnyJob = "/jobs/";

    private readonly Dictionary<string, string> _cookies = [];
    private readonly bool _owner = true;
    private WebApplication _app;
    private HttpClient _client;

    private DeskSite(string folder, TimeProvider clock, WebApplication app, HttpClient client) => (Folder, Clock, _app, _client) = (folder, clock, app, client);

    private DeskSite(DeskSite of) : this(of.Folder, of.Clock, of._app, of._client) => _owner = false;

    public string Folder { get; }

    public TimeProvider Clock { get; }

    public JobStore Store => (JobStore)_app.Services.GetService(typeof(JobStore))!;

    public static async Task<DeskSite> Open()
    {
        var folder = Directory.CreateTempSubdirectory("headroom-desk-").FullName;
        var clock = new SetClock();
        var (app, client) = await Start(folder, clock);
        return new(folder, clock, app, client);
    }

    /// <summary>A desk that has the example.</summary>
    public static async Task<DeskSite> WithBarn()
    {
        var site = await Open();
        await site.Send("/example", await site.Page("/"), []);
        return site;
    }

    /// <summary>Puts a job into the store.</summary>
    public void Import(string text)
    {
        var job = text.Split('\n').First(line => line.StartsWith("job: ", StringComparison.Ordinal))["job: ".Length..];
        Store.Add(job, JobText.Of(text), new("R. Hollis", "from a file"));
    }

    /// <summary>Another browser at the same desk.</summary>
    public DeskSite Another() => new(this);

    /// <summary>Ends the desk and starts it again on the same folder.</summary>
    public async Task Restart()
    {
        await _app.DisposeAsync();
        (_app, _client) = await Start(Folder, Clock);
    }

    public async Task<IHtmlDocument> Page(string address, HttpStatusCode expected = HttpStatusCode.OK)
    {
        using var answer = await Ask(new HttpRequestMessage(HttpMethod.Get, address));
        return await Read(answer, expected);
    }

    public Task<HttpResponseMessage> Get(string address) => Ask(new HttpRequestMessage(HttpMethod.Get, address));

    /// <summary>Fills the form that is sent to an address, from what stands in it, and follows where it leads.</summary>
    public async Task<IHtmlDocument> Fill(IHtmlDocument page, string action, Action<Dictionary<string, string>> fill, HttpStatusCode expected = HttpStatusCode.OK)
    {
        var form = page.QuerySelectorAll<IHtmlFormElement>("form[method=post]").First(one => one.GetAttribute("action")!.StartsWith(action, StringComparison.Ordinal));
        var fields = form.QuerySelectorAll<IHtmlInputElement>("input").Where(input => input.Name is not null && (input.Type != "checkbox" || input.IsChecked)).GroupBy(input => input.Name!).ToDictionary(group => group.Key, group => group.First().Value);
        foreach (var choice in form.QuerySelectorAll<IHtmlSelectElement>("select"))
            fields[choice.Name!] = choice.Value ?? "";
        fill(fields);
        return await Send(form.GetAttribute("action")!, page, fields, expected);
    }

    /// <summary>Sends fields with the token of a page.</summary>
    public async Task<IHtmlDocument> Send(string address, IHtmlDocument page, Dictionary<string, string> fields, HttpStatusCode expected = HttpStatusCode.OK)
    {
        fields["__RequestVerificationToken"] = page.QuerySelector<IHtmlInputElement>("input[name=__RequestVerificationToken]")!.Value;
        return await Send(address, new FormUrlEncodedContent(fields), expected);
    }

    public async Task<IHtmlDocument> Send(string address, HttpContent content, HttpStatusCode expected = HttpStatusCode.OK)
    {
        var answer = await Ask(new HttpRequestMessage(HttpMethod.Post, address) { Content = content });
        if (answer.StatusCode == HttpStatusCode.SeeOther)
            return await Page(answer.Headers.Location!.ToString(), expected);
        return await Read(answer, expected);
    }

    /// <summary>Waits until the last task of a page is over.</summary>
    public async Task<IHtmlDocument> Done(string address)
    {
        for (var tries = 0; tries < 600; tries++)
        {
            var page = await Page(address);
            if (page.QuerySelector("[data-told]") is not null && page.QuerySelector("[data-events]") is null)
                return page;
            await Task.Delay(100, TestContext.Current.CancellationToken);
        }

        throw new TimeoutException(address);
    }

    public async ValueTask DisposeAsync()
    {
        if (!_owner)
            return;
        await _app.DisposeAsync();
        Directory.Delete(Folder, recursive: true);
    }

    private static async Task<(WebApplication, HttpClient)> Start(string folder, TimeProvider clock)
    {
        var app = DeskHost.Build(new DeskSettings(new StorePlace(folder), new Uri(DeskAddress.Usual), "R. Hollis") { Clock = clock }, host => host.UseTestServer());
        await app.StartAsync(TestContext.Current.CancellationToken);
        return (app, app.GetTestClient());
    }

    private async Task<HttpResponseMessage> Ask(HttpRequestMessage request)
    {
        if (_cookies.Count > 0)
            request.Headers.Add("Cookie", string.Join("; ", _cookies.Select(cookie => $"{cookie.Key}={cookie.Value}")));
        var answer = await _client.SendAsync(request, HttpCompletionOption.ResponseHeadersRead, TestContext.Current.CancellationToken);
        foreach (var set in answer.Headers.TryGetValues("Set-Cookie", out var values) ? values : [])
        {
            var pair = set.Split(';')[0].Split('=', 2);
            _cookies[pair[0]] = pair[1];
        }

        return answer;
    }

    private static async Task<IHtmlDocument> Read(HttpResponseMessage answer, HttpStatusCode expected)
    {
        var text = await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken);
        var page = await new HtmlParser().ParseDocumentAsync(text, TestContext.Current.CancellationToken);
        Assert.True(answer.StatusCode == expected, $"{answer.RequestMessage?.RequestUri}: {answer.StatusCode}\n{page.QuerySelector("main")?.Text()}");
        return page;
    }

    private sealed class SetClock : TimeProvider
    {
        // The day stands; seconds go on, so that a process that has gone is missed.
        private static readonly DateTimeOffset Day = new(2026, 11, 25, 9, 0, 0, TimeSpan.Zero);
        private readonly long _begun = Environment.TickCount64;

        public override TimeZoneInfo LocalTimeZone => TimeZoneInfo.Utc;

        public override DateTimeOffset GetUtcNow() => Day.AddMilliseconds(Environment.TickCount64 - _begun);
    }
}

using System.Net;
using Headroom.Store;
using UglyToad.PdfPig;

namespace Headroom.Desk.Tests;

public sealed class WorkTests
{
    private const string Id = "cobnut-barn-animal-doctors";

    [Fact]
    public async Task Papers_are_made_in_the_background_kept_and_come_out_as_they_were()
    {
        await using var site = await DeskSite.WithBarn();
        await site.Fill(await site.Page(DeskSite.Barn + "/papers"), DeskSite.Barn + "/papers", fields => fields["paper"] = "limits");
        var page = await site.Done(DeskSite.Barn + "/papers");
        var link = page.QuerySelector($"a[href^='{DeskSite.Barn}/papers/']")!;
        Assert.Equal("What is left of every limit", Words.Of(link));
        using var first = await site.Get(link.GetAttribute("href")!);
        var bytes = await first.Content.ReadAsByteArrayAsync(TestContext.Current.CancellationToken);
        Assert.Equal("attachment", first.Content.Headers.ContentDisposition!.DispositionType);
        using (var paper = PdfDocument.Open(bytes))
            Assert.Contains("Cobnut Barn Animal Doctors", paper.GetPage(1).Text, StringComparison.Ordinal);
        // After a change of the job the paper is still the one that went out.
        await site.Fill(await site.Page(DeskSite.Barn + "/survey"), DeskSite.Barn, fields => fields[fields.First(field => field.Value == "K-17").Key[..^4] + "cable"] = "yard-23");
        using var second = await site.Get(link.GetAttribute("href")!);
        Assert.Equal(bytes, await second.Content.ReadAsByteArrayAsync(TestContext.Current.CancellationToken));
    }

    [Fact]
    public async Task The_firm_in_the_data_folder_stands_on_papers_and_what_is_wrong_with_its_file_is_said()
    {
        await using var site = await DeskSite.WithBarn();
        var file = Path.Combine(site.Folder, "firm.yaml");
        await File.WriteAllTextAsync(file, "firm: 1\nname: Reed & Daughters\ncurrency: {letters: GPB}\nadress: [Mill Lane 3]\n", TestContext.Current.CancellationToken);
        Assert.Contains("firm.yaml:4:1", Words.Of(await site.Page("/")), StringComparison.Ordinal);
        await File.WriteAllTextAsync(file, "firm: 1\nname: Reed & Daughters\n", TestContext.Current.CancellationToken);
        File.SetLastWriteTimeUtc(file, DateTime.UtcNow.AddMinutes(1));
        await site.Fill(await site.Page(DeskSite.Barn + "/papers"), DeskSite.Barn + "/papers", fields => fields["paper"] = "limits");
        var page = await site.Done(DeskSite.Barn + "/papers");
        using var made = await site.Get(page.QuerySelector($"a[href^='{DeskSite.Barn}/papers/']")!.GetAttribute("href")!);
        using var paper = PdfDocument.Open(await made.Content.ReadAsByteArrayAsync(TestContext.Current.CancellationToken));
        Assert.Contains("Reed & Daughters", paper.GetPage(1).Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_remedy_is_found_and_put_into_the_job_once()
    {
        await using var site = await DeskSite.WithBarn();
        await site.Fill(await site.Page(DeskSite.Barn + "/remedies"), DeskSite.Barn + "/remedies", _ => { });
        var page = await site.Done(DeskSite.Barn + "/remedies");
        Assert.Contains("changes were studied with the whole ledger", Words.Of(page), StringComparison.Ordinal);
        var ledger = await site.Fill(page, "/tasks/", fields => fields["name"] = "less-dark");
        Assert.Contains("design less-dark", Words.Of(ledger.Body), StringComparison.OrdinalIgnoreCase);
        Assert.Contains("  less-dark:", site.Store.Read(Id)!.Text, StringComparison.Ordinal);
        Assert.Contains("has a design 'less-dark' already", Words.Of(await site.Fill(page, "/tasks/", fields => fields["name"] = "less-dark", HttpStatusCode.UnprocessableEntity)), StringComparison.Ordinal);
    }

    // From nothing but a few questions to a design that is studied.
    [Fact]
    public async Task A_job_from_a_few_questions_gets_a_design_from_the_planner()
    {
        await using var site = await DeskSite.Open();
        var job = await site.Fill(await site.Page("/new"), "/new", fields => (fields["name"], fields["people"], fields["phones"], fields["points"], fields["listener"]) = ("Fern: Office", "4", "3", "1", "the front desk"));
        Assert.Contains("no design yet", Words.Of(job), StringComparison.Ordinal);
        await site.Fill(await site.Page("/jobs/fern-office/enquiry"), "/jobs/fern-office/enquiry", _ => { });
        var note = Words.Of(await site.Done("/jobs/fern-office/enquiry"));
        // No rates are at hand, so what work and cables come to is not known, and is not left out in silence.
        Assert.Matches("At least [0-9 ]+ to [0-9 ]+ EUR, and how much more is not known", note);
        Assert.Contains("not in it: work, cables, panels", note, StringComparison.Ordinal);
        Assert.Contains("must not hear it: the front desk, at most 40 dB(A)", note, StringComparison.Ordinal);
        Assert.Contains("Who decides, and who pays?", note, StringComparison.Ordinal);
        using var text = await site.Get("/jobs/fern-office/enquiry.txt");
        Assert.Equal("attachment", text.Content.Headers.ContentDisposition!.DispositionType);
        await site.Fill(await site.Page("/jobs/fern-office/proposals"), "/jobs/fern-office/proposals", _ => { });
        var page = await site.Done("/jobs/fern-office/proposals");
        // Cost against sound as a drawing, and the values at which another design becomes the cheapest.
        Assert.Contains("Cost against sound", page.QuerySelector(".drawing svg")!.TextContent, StringComparison.Ordinal);
        await site.Fill(await site.Page("/jobs/fern-office/turning"), "/jobs/fern-office/turning", _ => { });
        Assert.Contains("Where the cheapest design changes", (await site.Done("/jobs/fern-office/turning")).QuerySelector(".drawing svg")!.TextContent, StringComparison.Ordinal);
        var ledger = await site.Fill(page, "/tasks/", fields => fields["name"] = "first");
        Assert.Contains("0 short", Words.Of(ledger), StringComparison.Ordinal);
        Assert.Contains("design first", Words.Of(ledger), StringComparison.OrdinalIgnoreCase);
    }

    [Fact]
    public async Task How_far_it_is_comes_as_events_until_it_is_over()
    {
        await using var site = await DeskSite.WithBarn();
        await site.Fill(await site.Page(DeskSite.Barn + "/papers"), DeskSite.Barn + "/papers", fields => fields["paper"] = "calculation-book");
        var task = site.Store.LastTask(Id, "papers")!;
        using var answer = await site.Get($"/tasks/{task.Id}/events");
        Assert.Equal("text/event-stream", answer.Content.Headers.ContentType!.MediaType);
        var events = (await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken)).Split("\n\n", StringSplitOptions.RemoveEmptyEntries);
        Assert.All(events, one => Assert.StartsWith("data: {\"told\":\"", one, StringComparison.Ordinal));
        Assert.Contains("\"over\":true", events[^1], StringComparison.Ordinal);
        Assert.Equal(TaskState.Done, site.Store.Task(task.Id)!.State);
    }

    [Fact]
    public async Task Work_is_stopped_and_keeps_nothing()
    {
        await using var site = await DeskSite.WithBarn();
        await site.Fill(await site.Page(DeskSite.Barn + "/papers"), DeskSite.Barn + "/papers", fields => fields["paper"] = "handover-pack");
        await site.Fill(await site.Page(DeskSite.Barn + "/remedies"), DeskSite.Barn + "/remedies", _ => { });
        var page = await site.Page(DeskSite.Barn + "/remedies");
        await site.Fill(page, "/tasks/", _ => { });
        page = await site.Done(DeskSite.Barn + "/remedies");
        Assert.Contains("It was stopped", Words.Of(page), StringComparison.Ordinal);
        Assert.Empty(page.QuerySelectorAll(".find"));
    }

    [Fact]
    public async Task Work_that_a_process_left_undone_is_taken_up_after_a_restart()
    {
        await using var site = await DeskSite.WithBarn();
        // A process that is gone: it took the task and was not heard of again.
        var task = site.Store.Ask(Id, 1, ("papers", """{"Design":"mended","Words":["limits"]}"""), "J. Marsh");
        using (var gone = JobStore.Open(new StorePlace(site.Folder), new Earlier()))
            gone.Take("gone", TimeSpan.FromSeconds(30));
        await site.Restart();
        var page = await site.Done(DeskSite.Barn + "/papers");
        Assert.Equal(TaskState.Done, site.Store.Task(task)!.State);
        Assert.Contains("J. Marsh", Words.Of(page), StringComparison.Ordinal);
        Assert.Equal("mended", Assert.Single(site.Store.Papers(Id)).Design);
    }

    private sealed class Earlier : TimeProvider
    {
        public override DateTimeOffset GetUtcNow() => new(2026, 11, 25, 8, 0, 0, TimeSpan.Zero);
    }
}

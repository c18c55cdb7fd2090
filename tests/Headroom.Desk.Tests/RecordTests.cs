using System.Net;

namespace Headroom.Desk.Tests;

public sealed class RecordTests
{
    private const string Id = "cobnut-barn-animal-doctors";

    [Fact]
    public async Task A_reading_is_kept_beside_what_was_expected()
    {
        await using var site = await DeskSite.WithBarn();
        var page = await site.Fill(await site.Page(DeskSite.Barn + "/readings"), DeskSite.Barn, fields => (fields["what"], fields["at"], fields["value"], fields["with"], fields["while"]) = ("watts", "sw-1/3", "8.1 W", "switch", "typical"));
        Assert.Matches("sw-1/3 8.1 W on 25 Nov 2026, switch, typical, expected [0-9.]+ W: ", Words.Of(page));
        Assert.Contains("- {what: watts, at: sw-1/3, value: 8.1 W, with: switch, on: 2026-11-25, while: typical}", site.Store.Read(Id)!.Text, StringComparison.Ordinal);
    }

    [Theory, InlineData("watts", "8.1 V", "8.1 V"), InlineData("wats", "8.1 W", "wats"), InlineData("watts", "{8", "every brace")]
    public async Task A_reading_that_is_none_is_refused_and_what_was_typed_stays(string what, string value, string said)
    {
        await using var site = await DeskSite.WithBarn();
        var page = await site.Fill(await site.Page(DeskSite.Barn + "/readings"), DeskSite.Barn, fields => (fields["what"], fields["at"], fields["value"]) = (what, "sw-1/3", value), HttpStatusCode.UnprocessableEntity);
        Assert.Contains(said, Words.Of(page.QuerySelector(".findings")), StringComparison.Ordinal);
        Assert.Equal(value, page.QuerySelector("input[name=value]")!.GetAttribute("value"));
        Assert.Single(site.Store.Revisions(Id));
    }

    [Fact]
    public async Task A_verdict_is_set_aside_with_reason_name_and_day_and_anew_in_its_place()
    {
        await using var site = await DeskSite.WithBarn();
        const string entry = DeskSite.Barn + "/entry?id=power/sw-1/watts";
        await site.Fill(await site.Page(entry), DeskSite.Barn, fields => fields["because"] = "the phones have batteries: seen");
        var page = await site.Page(entry);
        Assert.Contains("held clear by R. Hollis, 25 Nov 2026: the phones have batteries: seen", Words.Of(page), StringComparison.Ordinal);
        await site.Fill(page, DeskSite.Barn, fields => fields["because"] = "measured");
        var text = site.Store.Read(Id)!.Text;
        Assert.Contains("- {entry: power/sw-1/watts, because: measured, by: R. Hollis, on: 2026-11-25}", text, StringComparison.Ordinal);
        Assert.DoesNotContain("batteries: seen", text, StringComparison.Ordinal);
        Assert.Contains("3 short", Words.Of(await site.Page(DeskSite.Barn)), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Without_a_reason_no_verdict_is_set_aside()
    {
        await using var site = await DeskSite.WithBarn();
        var page = await site.Fill(await site.Page(DeskSite.Barn + "/entry?id=power/sw-1/watts"), DeskSite.Barn, fields => fields["because"] = " ", HttpStatusCode.UnprocessableEntity);
        Assert.Contains("no reason", Words.Of(page.QuerySelector(".findings")), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Two_revisions_are_compared_and_one_is_gone_back_to()
    {
        await using var site = await DeskSite.WithBarn();
        await site.Fill(await site.Page(DeskSite.Barn + "/survey"), DeskSite.Barn, fields => fields[fields.First(field => field.Value == "K-17").Key[..^4] + "cable"] = "yard-23");
        var page = await site.Page(DeskSite.Barn + "/revisions?a=1&b=2");
        Assert.Contains("cable of K-17 of drops yard-24 yard-23", Words.Of(page), StringComparison.Ordinal);
        Assert.Contains("power/field-link/volts short: asked 21.0, there is 19.8", Words.Of(page), StringComparison.Ordinal);
        page = await site.Fill(page, DeskSite.Barn + "/undo", fields => fields["to"] = "1");
        Assert.Contains("Saved as revision 3", Words.Of(page), StringComparison.Ordinal);
        Assert.True(site.Store.Read(Id, 1)!.SameAs(site.Store.Read(Id)!));
        Assert.Equal("back to revision 1", site.Store.Revisions(Id)[0].What);
        await site.Fill(await site.Page(DeskSite.Barn + "/revisions"), DeskSite.Barn + "/undo", fields => fields["to"] = "77", HttpStatusCode.UnprocessableEntity);
    }

    // The models of today have a stronger supply: what was kept stands beside what the study says now.
    [Fact]
    public async Task After_the_models_changed_the_old_figures_are_still_there()
    {
        await using var site = await DeskSite.WithBarn();
        await site.Page(DeskSite.Barn);
        await File.WriteAllTextAsync(Path.Combine(site.Folder, "catalogue.yaml"), "catalogue: 1\nswitches: {wren-b: {like: wren-b, about: the firm's own}}\nendpoints: {pipit: {like: pipit, draws: {typical: 1.1 W measured, peak: 6.2 W measured}}}\n", TestContext.Current.CancellationToken);
        var page = Words.Of(await site.Page(DeskSite.Barn + "/revisions?a=1&b=1"));
        Assert.Contains("worked out now, revision 1", page, StringComparison.Ordinal);
        Assert.Contains("power/phone-1/watts clear: asked 4.813, there is 7.000, left 2.187 W clear: asked 6.222, there is 7.000, left 0.778 W", page, StringComparison.Ordinal);
        Assert.StartsWith("# ", System.Text.Encoding.UTF8.GetString(site.Store.Kept(Id, 1, "models")!.Bytes.Span), StringComparison.Ordinal);
    }

    [Fact]
    public async Task An_old_revision_shows_what_it_was_and_offers_no_form_that_would_pass_it_by()
    {
        await using var site = await DeskSite.WithBarn();
        await site.Fill(await site.Page(DeskSite.Barn + "/survey"), DeskSite.Barn, fields => fields[fields.First(field => field.Value == "K-17").Key[..^4] + "cable"] = "yard-23");
        var page = await site.Page(DeskSite.Barn + "?revision=1");
        Assert.Contains("This is revision 1 as it stood; the last is 2", Words.Of(page), StringComparison.Ordinal);
        Assert.Contains("revision=1", page.QuerySelector(".sheets a[href*='/survey']")!.GetAttribute("href"), StringComparison.Ordinal);
        // Saved from there, a change goes on top of what came after.
        await site.Fill(await site.Page(DeskSite.Barn + "/survey?revision=1"), DeskSite.Barn, fields => fields[fields.First(field => field.Value == "K-01").Key[..^4] + "length"] = "15 m");
        Assert.Contains("cable: yard-23, bundle: 5, panel cord", site.Store.Read(Id)!.Text, StringComparison.Ordinal);
    }
}

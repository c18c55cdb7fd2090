using System.Net;

namespace Headroom.Desk.Tests;

public sealed class UnitTests
{
    private const string Id = "cobnut-barn-animal-doctors";
    private const string Units = DeskSite.Barn + "/units";

    [Fact]
    public async Task Another_model_is_put_into_a_design_and_nothing_else_changes()
    {
        await using var site = await DeskSite.WithBarn();
        var before = site.Store.Read(Id)!.Text;
        var page = await site.Fill(await site.Page(Units + "?design=as-offered"), Units, fields => fields[Row(fields, "sw-1") + ".model"] = "redshank");
        Assert.Contains("Saved as revision 2", Words.Of(page), StringComparison.Ordinal);
        Assert.Equal(before.Replace("sw-1: {model: wren-b, supply: small, in", "sw-1: {model: redshank, supply: small, in", StringComparison.Ordinal), site.Store.Read(Id)!.Text);
    }

    [Fact]
    public async Task What_cannot_be_is_said_at_its_cell_and_what_was_typed_stays()
    {
        await using var site = await DeskSite.WithBarn();
        var page = await site.Fill(await site.Page(Units + "?design=as-offered"), Units, fields => fields[Row(fields, "sw-1") + ".model"] = "wren-x", HttpStatusCode.UnprocessableEntity);
        Assert.Contains("wren-x", Words.Of(page.QuerySelector("tr.slip .wrong")!), StringComparison.Ordinal);
        Assert.Equal("wren-x", page.QuerySelector("tr.slip input[aria-invalid]")!.GetAttribute("value"));
        Assert.Single(site.Store.Revisions(Id));
    }

    [Fact]
    public async Task A_new_design_is_like_another_and_takes_over_what_is_not_written_in_it()
    {
        await using var site = await DeskSite.WithBarn();
        var page = await site.Fill(await site.Page(Units), DeskSite.Barn + "/design", fields => (fields["name"], fields["like"]) = ("cheaper", "as-offered"));
        Assert.Contains("It is like as-offered", Words.Of(page), StringComparison.Ordinal);
        Assert.Equal("as in as-offered", Words.Of(page.QuerySelector(".cells .remark")!));
        // One cell alone is written; the rest follows the other design.
        await site.Fill(page, Units, fields => fields[Row(fields, "sw-1") + ".supply"] = "large");
        Assert.Contains("supply: large", Design(site, "cheaper"), StringComparison.Ordinal);
        Assert.DoesNotContain("model", Design(site, "cheaper"), StringComparison.Ordinal);
        page = await site.Fill(await site.Page(Units + "?design=cheaper"), DeskSite.Barn + "/choose", _ => { });
        Assert.Contains("cheaper is chosen", Words.Of(page), StringComparison.Ordinal);
        Assert.Contains("design cheaper", Words.Of(await site.Page(DeskSite.Barn)), StringComparison.OrdinalIgnoreCase);
        Assert.Contains("has a design 'cheaper' already", Words.Of(await site.Fill(page, DeskSite.Barn + "/design", fields => fields["name"] = "cheaper", HttpStatusCode.UnprocessableEntity)), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_unit_is_taken_out_with_what_hangs_on_it_and_put_back()
    {
        await using var site = await DeskSite.WithBarn();
        var before = site.Store.Read(Id)!.Text;
        var page = await site.Fill(await site.Page(Units + "?design=mended&part=injectors"), Units, fields => fields[Row(fields, "radio-feed") + ".out"] = "yes");
        Assert.Contains("Saved as revision 2", Words.Of(page), StringComparison.Ordinal);
        Assert.Contains("radio-feed: none", Design(site, "mended"), StringComparison.Ordinal);
        Assert.Contains("K-17: none", Design(site, "mended"), StringComparison.Ordinal);
        Assert.DoesNotContain(page.QuerySelectorAll(".cells tbody th span"), cell => cell.TextContent == "radio-feed");
        await site.Fill(page, Units, fields => fields["back"] = "radio-feed");
        Assert.DoesNotContain("radio-feed: none", Design(site, "mended"), StringComparison.Ordinal);
        Assert.StartsWith(before[..before.IndexOf("  mended:", StringComparison.Ordinal)], site.Store.Read(Id)!.Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_switch_that_stands_alone_in_its_design_takes_its_cords_and_links_along()
    {
        await using var site = await DeskSite.WithBarn();
        var page = await site.Page(Units + "?design=as-offered");
        page = await site.Fill(page, Units, fields =>
        {
            var row = fields.Keys.First(key => key.EndsWith(".name", StringComparison.Ordinal) && fields[key].Length == 0)[..^5];
            (fields[row + ".name"], fields[row + ".model"], fields[row + ".in"]) = ("sw-2", "redshank", "A");
        });
        Assert.Contains("sw-2: {model: redshank, in: A}", Design(site, "as-offered"), StringComparison.Ordinal);
        // The injector is fed over a port of sw-1 and the other design writes of it: that is said, and nothing is saved.
        page = await site.Fill(page, Units, fields => fields[Row(fields, "sw-1") + ".out"] = "yes", HttpStatusCode.UnprocessableEntity);
        Assert.Contains("sw-1", Words.Of(page.QuerySelector(".findings")!), StringComparison.Ordinal);
        Assert.Equal(2, site.Store.Find(Id)!.Head);
    }

    [Fact]
    public async Task A_link_is_changed_put_in_and_taken_out()
    {
        await using var site = await DeskSite.WithBarn();
        var page = await site.Fill(await site.Page(Units + "?design=mended&part=uplinks&also=far module"), Units, fields => fields["r0.far module"] = "limpet");
        // Taken over as a whole before, written here now.
        Assert.Contains("uplinks: [{from: sw-1/25, to: line, media: fibre, module: limpet, far module: limpet, drop: F-1}]", Design(site, "mended"), StringComparison.Ordinal);
        page = await site.Fill(page, Units, fields => (fields["r1.from"], fields["r1.to"], fields["r1.media"]) = ("sw-1/26", "line", "copper"));
        Assert.Contains("{from: sw-1/26, to: line, media: copper}", Design(site, "mended"), StringComparison.Ordinal);
        page = await site.Fill(page, Units, fields => (fields["r0.out"], fields["r1.out"]) = ("yes", "yes"));
        Assert.DoesNotContain("sw-1/26", Design(site, "mended"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_years_of_a_design_say_what_becomes_short_first_and_what_is_due()
    {
        await using var site = await DeskSite.WithBarn();
        var page = Words.Of(await site.Page(DeskSite.Barn + "/years?design=as-offered&until=7"));
        // The figures are those of docs/years.md, which the tests of the command hold.
        Assert.Contains("Next short, by 25 Aug 2028: ups-1", page, StringComparison.Ordinal);
        Assert.Contains("batteries at the end of their life", page, StringComparison.Ordinal);
        Assert.Contains("12 Aug 2028", page, StringComparison.Ordinal);
        Assert.Contains("whole number from 1 to 20", Words.Of(await site.Page(DeskSite.Barn + "/years?until=soon", HttpStatusCode.UnprocessableEntity)), StringComparison.Ordinal);
    }

    private static string Row(Dictionary<string, string> fields, string name) => fields.First(field => field.Value == name && field.Key.EndsWith(".name", StringComparison.Ordinal)).Key[..^5];

    private static string Design(DeskSite site, string name)
    {
        var text = site.Store.Read(Id)!.Text;
        var from = text.IndexOf($"\n  {name}:", StringComparison.Ordinal);
        var end = text.IndexOf("\n  ", from + 4, StringComparison.Ordinal);
        for (; end >= 0 && text[end + 3] == ' '; end = text.IndexOf("\n  ", end + 3, StringComparison.Ordinal))
        {
            // Lines that lie deeper belong to it.
        }

        var section = text.IndexOf("\n\n", from, StringComparison.Ordinal);
        return text[from..(new[] { end, section, text.Length }.Where(at => at > from).Min())];
    }
}

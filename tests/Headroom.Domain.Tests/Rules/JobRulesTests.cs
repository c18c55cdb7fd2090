using Headroom.Domain.Catalogues;
using Headroom.Domain.Findings;
using Headroom.Domain.Rules;

namespace Headroom.Domain.Tests.Rules;

public class JobRulesTests
{
    public static TheoryData<string> Slips => [.. SlipTable.Rows.Keys];

    [Fact]
    public void A_sound_job_raises_nothing() => Assert.Empty(Site.Sound().Findings);

    [Theory, MemberData(nameof(Slips))]
    public void A_slip_raises_its_rule(string slip)
    {
        var (rule, make) = SlipTable.Rows[slip];
        var site = Site.Sound();
        make(site);
        var found = Assert.Single(site.Findings, f => f.Code == rule.Code);
        Assert.Equal(rule.Severity, found.Severity);
        Assert.All([found.Given, found.Allowed, found.Advice], part => Assert.NotEqual("", part));
    }

    [Fact]
    public void Every_rule_of_the_table_is_raised_by_a_slip() =>
        Assert.Equal(RuleCodes.All.Select(r => r.Code), SlipTable.Rows.Values.Select(r => r.Rule.Code).Distinct().Order());

    [Fact]
    public void No_two_rules_share_a_code_or_a_meaning()
    {
        Assert.Equal(RuleCodes.All.Count, RuleCodes.All.Select(r => r.Code).Distinct().Count());
        Assert.Equal(RuleCodes.All.Count, RuleCodes.All.Select(r => r.Meaning).Distinct().Count());
    }

    [Fact]
    public void The_table_holds_every_rule_there_is() =>
        Assert.Equal(typeof(RuleCodes).GetProperties().Count(p => p.PropertyType == typeof(RuleCode)), RuleCodes.All.Count);

    [Fact]
    public void A_rule_below_a_hundred_stops_the_work() =>
        Assert.All(RuleCodes.All, r => Assert.Equal(int.Parse(r.Code[3..], null) < 100, r.Severity == Severity.Error));

    [Fact]
    public void An_unknown_name_is_met_with_the_one_probably_meant()
    {
        var site = Site.Sound();
        site.Drops.Change(0, d => d with { From = "cupbord" });
        var found = Assert.Single(site.Findings);
        Assert.Equal("drop K-01 names the space 'cupbord'", found.Given);
        Assert.Equal("a space of the job is one of office, store, cupboard", found.Allowed);
        Assert.Equal("did you mean 'cupboard'?", found.Advice);
    }

    [Fact]
    public void Fellows_on_a_single_fibre_understand_one_another()
    {
        var site = Site.Sound();
        site.Designs.Change(0, d => d with { Uplinks = [d.Uplinks![0] with { Module = "red", FarModule = "blue" }, .. d.Uplinks.Skip(1)] });
        Assert.Empty(site.Findings);
    }

    [Fact]
    public void The_ring_of_uplinks_is_named()
    {
        var site = Site.Sound();
        SlipTable.Rows["uplinks in a ring of two with a third switch"].Make(site);
        var found = Assert.Single(site.Findings, f => f.Code == RuleCodes.UplinkRing.Code);
        Assert.EndsWith("sw-3 -> sw-1 -> sw-2 -> sw-3", found.Given, StringComparison.Ordinal);
    }

    [Fact]
    public void Two_links_between_two_switches_are_a_bundle_and_no_ring()
    {
        var site = Site.Sound();
        site.Designs.Change(0, d => d with { Uplinks = [.. d.Uplinks!, site.Link("sw-1", 6, "sw-2", 6)] });
        Assert.Empty(site.Findings);
    }

    [Fact]
    public void A_spot_outside_says_the_axis_and_the_size()
    {
        var site = Site.Sound();
        site.Listeners.Change(0, l => l with { Spot = site.At(1, 5.5, 1) });
        var found = Assert.Single(site.Findings);
        Assert.Equal("listener desk is at y = 5.5 m in office", found.Given);
        Assert.StartsWith("office is 5 m wide (6 m x 5 x 2.7 m)", found.Allowed, StringComparison.Ordinal);
    }

    [Fact]
    public void The_missing_number_is_named_once_for_its_series()
    {
        var site = Site.Sound();
        foreach (var n in Enumerable.Range(4, 9).Append(14).Append(16))
            site.Drop($"K-{n:00}", 31);
        var found = Assert.Single(site.Findings, f => f.Code == RuleCodes.NumberingGap.Code);
        Assert.Equal("in the drops K-01 to K-16 there is no K-13, K-15", found.Given);
    }

    [Fact]
    public void Room_numbers_are_no_series()
    {
        var site = Site.Sound();
        foreach (var id in new[] { "R-101", "R-102", "R-205", "R-310" })
            site.Drop(id, 31);
        Assert.Empty(site.Findings);
    }

    [Fact]
    public void A_run_of_exactly_ninety_metres_is_not_asked_about()
    {
        var site = Site.Sound();
        site.Drop("K-04", 90);
        Assert.Empty(site.Findings);
    }

    [Fact]
    public void Fibre_may_be_longer_than_copper()
    {
        var site = Site.Sound();
        site.Drops.Add(site.Drops[0] with { Id = "F-1", Pieces = [site.Piece(220) with { Cable = "glass" }], At = site.Here() });
        Assert.Empty(site.Findings);
    }

    [Fact]
    public void An_endpoint_may_be_named_like_the_drop_it_hangs_on()
    {
        var site = Site.Sound();
        site.Endpoints.Change(0, e => e with { Id = "K-01" });
        Assert.Empty(site.Findings);
    }

    [Fact]
    public void Unused_outlets_raise_nothing()
    {
        var site = Site.Sound();
        site.Drop("K-04", 31);
        Assert.Empty(site.Findings);
    }

    [Fact]
    public void What_a_design_takes_over_is_not_reported_again()
    {
        var site = Site.Sound();
        SlipTable.Rows["two drops on one port"].Make(site);
        site.Designs.Add(site.Empty("third") with { Like = "second" });
        Assert.Single(site.Findings);
    }

    [Fact]
    public void What_only_the_later_design_breaks_is_reported_there()
    {
        var site = Site.Sound();
        site.Designs.Change(1, d => d with { Patch = [site.Patch("K-01", "sw-1", 2)] });
        var found = Assert.Single(site.Findings);
        Assert.Equal((RuleCodes.PortTaken.Code, "K-02 leads to sw-1/2, where K-01 is already"), (found.Code, found.Given));
    }

    [Fact]
    public void All_slips_come_in_one_go()
    {
        var site = Site.Sound();
        SlipTable.Rows["a range the wrong way round"].Make(site);
        SlipTable.Rows["a patch to no unit"].Make(site);
        SlipTable.Rows["a chosen design that is none"].Make(site);
        Assert.Equal(3, site.Findings.Count(f => f.Severity == Severity.Error));
    }

    [Fact]
    public void Without_a_catalogue_every_model_is_unknown_and_nothing_else()
    {
        var site = Site.Sound();
        site.Catalogue = Catalogue.Empty;
        var models = new[] { RuleCodes.UnknownCable, RuleCodes.UnknownEndpointModel, RuleCodes.UnknownUnitModel };
        Assert.Equal(models.Select(r => r.Code), site.Codes.Distinct().Order());
    }

    [Fact]
    public void An_empty_job_raises_nothing() => Assert.Empty(new Site().Findings);
}

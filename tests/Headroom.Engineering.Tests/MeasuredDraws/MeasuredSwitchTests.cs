using Headroom.Domain.Findings;
using Headroom.Domain.Jobs;
using Headroom.Domain.Ledgers;
using Headroom.Engineering.Tests.Studies;

namespace Headroom.Engineering.Tests.MeasuredDraws;

/// <summary>A switch that counts what is drawn, with readings of this and other sites; all figures are invented.</summary>
public sealed class MeasuredSwitchTests
{
    private static readonly PowerSetting ByDraw = PowerSetting.Silent with { ReservesBy = ReservesBy.Measured };

    private static Site Aps(PowerSetting? setting = null) => new Site()
        .Switch("sw-1", 250, setting ?? ByDraw)
        .Model(Site.Device("ap", 4, typical: 6.1, peak: 9, start: 2))
        .PutMany(10, "ap", "sw-1", metres: 1);

    private static Ledger With(Site site, params (string Site, string Mode, double Watts)[] readings) => Study.Run(
        site.Job, site.Catalogue, new StudyRequest(null, Site.Today, [], null) { FirmReadings = [.. readings.Select(r => new FirmReading(r.Site, "ap", r.Mode, r.Watts, Place.None))] });

    private static LedgerEntry Watts(Ledger ledger) => ledger.Entries.Single(entry => entry.Id == "power/sw-1/watts");

    private static (string, string, double)[] Sites(int count, double watts, string mode = "peak") =>
        [.. Enumerable.Range(1, count).SelectMany(site => new[] { ($"site {site}", mode, watts), ($"site {site}", mode, watts + 0.1) })];

    [Fact]
    public void Without_readings_the_catalogue_alone_counts() =>
        Assert.Equal(Aps().Entry("power/sw-1/watts").Demand, Watts(With(Aps())).Demand);

    [Fact]
    public void Readings_of_many_sites_bring_the_demand_down_to_what_is_drawn()
    {
        var (before, after) = (Watts(With(Aps())).Demand!.Value, Watts(With(Aps(), Sites(12, 7))).Demand!.Value);
        Assert.InRange(before, 90, 92);
        Assert.InRange(after, 70, 77);
        Assert.DoesNotContain(Watts(With(Aps(), Sites(12, 7))).Assumed, text => text.Contains("prior-driven", StringComparison.Ordinal));
    }

    [Fact]
    public void Below_five_sites_it_is_said_that_the_catalogue_decides()
    {
        var entry = Watts(With(Aps(), Sites(2, 7)));
        Assert.Contains(entry.Assumed, text => text.Contains("readings of ap from 2 sites", StringComparison.Ordinal) && text.Contains("prior-driven", StringComparison.Ordinal));
        Assert.True(entry.Demand > Watts(With(Aps(), Sites(12, 7))).Demand);
    }

    [Fact]
    public void The_working_adds_up_to_the_demand()
    {
        var entry = Watts(With(Aps(), Sites(6, 7)));
        var steps = entry.Story.Work(entry).Steps;
        var parts = steps.Where(step => step.Name.Contains(" x ", StringComparison.Ordinal) || step.Name == "on top of the means").Sum(step => step.Value!.Value);
        Assert.Equal(entry.Demand!.Value, parts, 1e-6);
    }

    [Fact]
    public void A_switch_that_counts_by_class_keeps_its_demand_and_shows_the_readings_beside_it()
    {
        var by = PowerSetting.Silent with { ReservesBy = ReservesBy.Class };
        var entry = Watts(With(Aps(by), Sites(6, 7)));
        Assert.Equal(300, entry.Demand!.Value, 1e-9);
        Assert.Contains(entry.Beside, row => row.Group == "readings");
    }

    [Fact]
    public void A_reading_of_this_job_counts_as_one_site()
    {
        var entry = Aps().Read("watts", "sw-1/3", 7.2, "W", during: "peak").Entry("power/sw-1/watts");
        Assert.Contains(entry.Assumed, text => text.Contains("readings of ap from 1 site;", StringComparison.Ordinal));
    }

    [Fact]
    public void A_bound_is_no_reading() =>
        Assert.Equal(Aps().Entry("power/sw-1/watts").Demand, Aps().Read("watts", "sw-1/3", 7.2, "W", during: "peak", bound: true).Entry("power/sw-1/watts").Demand);
}

using Headroom.Domain.Jobs;
using Headroom.Domain.Ledgers;
using Headroom.Domain.Quantities;
using Headroom.Engineering.Years;
using Headroom.JobFiles;

namespace Headroom.Engineering.Tests.Years;

public sealed class YearsStudyTests
{
    [Fact]
    public void Today_is_the_study_itself()
    {
        var job = YearsJob.Of("devices: {phone: 1}");
        var today = YearsJob.Years(job).Years[0];
        Assert.All(Enum.GetValues<Verdict>(), verdict => Assert.Equal(YearsJob.Study(job).Count(verdict), today.Count(verdict)));
    }

    [Fact]
    public void A_year_is_the_study_of_the_job_as_it_would_be_written_then()
    {
        var year = YearsJob.Years(YearsJob.Of("devices: {phone: 2}"), 1).Years[1];
        var written = YearsJob.Study(YearsJob.Of("devices: {}", batteries: "batteries: 2 years", endpoints: "{phone-1: {model: handset}, phone-2: {model: handset}, pc-1: {model: desk}, phone-3: {model: handset}, phone-4: {model: handset}}"));
        Assert.All(Enum.GetValues<Verdict>(), verdict => Assert.Equal(written.Count(verdict), year.Count(verdict)));
    }

    // Class 1 sets 4 W aside (IEEE 802.3): ten of them are 40 W, but only eight ports give power; two phones and two a year fill them in three years.
    [Fact]
    public void Devices_that_find_no_powered_port_make_it_short_in_the_year_in_which_they_come()
    {
        var result = YearsJob.Years(YearsJob.Of("devices: {phone: 2}", batteries: "batteries: 0 years"));
        Assert.Equal(["power/handset/ports"], result.Years[4].Turns.Where(turn => turn.Before is null).Select(turn => turn.Entry.Id));
        Assert.Equal(Change.Devices, result.Years[4].Turns.Single(turn => turn.Entry.Id == "power/handset/ports").By);
        Assert.DoesNotContain(result.Turns, turn => turn.Year < 4 && turn.Entry.Id == "power/handset/ports");
    }

    [Fact]
    public void Devices_with_a_supply_of_their_own_are_plugged_in_and_those_without_a_port_are_told()
    {
        var result = YearsJob.Years(YearsJob.Of("devices: {other: 5}"), 2);
        // Eight powered ports less two phones, two others less one computer: seven are free.
        Assert.Equal((0, 3), (result.Years[1].WithoutPort, result.Years[2].WithoutPort));
        Assert.True(result.ComesShort);
    }

    [Fact]
    public void A_battery_past_its_life_makes_the_minutes_short_in_the_month_in_which_it_is_due()
    {
        var result = YearsJob.Years(YearsJob.Of("devices: {}"));
        var due = result.Dues.Single(due => due.What.StartsWith("batteries", StringComparison.Ordinal));
        // Four years of life at 20 °C, one year old: three are left.
        Assert.Equal(new DateOnly(2029, 11, 25), due.On);
        Assert.Equal("standby/ups-1/runtime", result.FirstShort!.Entry.Id);
        Assert.Equal(Change.Batteries, result.FirstShort.By);
        Assert.InRange(result.FirstShort.On, due.On!.Value, due.On.Value.AddMonths(1));
    }

    [Fact]
    public void An_age_that_nobody_knows_stays_unknown_and_is_asked_for()
    {
        var result = YearsJob.Years(YearsJob.Of("devices: {}", batteries: "runtime: 40 min"));
        Assert.DoesNotContain(result.Turns, turn => turn.Entry.Id == "standby/ups-1/runtime");
        var due = result.Dues.Single(due => due.Subject == "ups-1" && due.What.StartsWith("batteries", StringComparison.Ordinal));
        Assert.Null(due.On);
        Assert.Contains("how old are the batteries of ups-1?", due.Question, StringComparison.Ordinal);
        Assert.Contains(result.Rates, rate => rate.Question == due.Question);
    }

    [Fact]
    public void Where_nobody_said_a_rate_nothing_changes_by_it_and_each_is_asked_for_once()
    {
        var result = YearsJob.Years(YearsJob.Of("", more: "money: {margin: 0 %, tax: {standard: 0 %}, budget: 101 EUR}", batteries: "batteries: 0 years"), 3);
        Assert.Empty(result.Turns);
        Assert.Equal(["devices", "air of fans", "prices of goods", "price of an hour"], result.Rates.Where(rate => rate.Question is not null).Select(rate => rate.What));
    }

    // 100 EUR that rise by 3 % a year are 106.09 after two years and 109.27 after three.
    [Fact]
    public void A_budget_is_broken_in_the_year_in_which_prices_have_risen_beyond_it()
    {
        var result = YearsJob.Years(YearsJob.Of("devices: {phone: 1}, prices: 3 %", more: "money: {margin: 0 %, tax: {standard: 0 %}, budget: 108 EUR}", batteries: "batteries: 0 years"));
        var turn = result.Turns.Single(turn => turn.Entry.Id == "money/offer/budget");
        Assert.Equal((3, Verdict.Short, Change.Prices), (turn.Year, turn.Entry.Verdict, turn.By));
        Assert.Equal(109.27, turn.Entry.Demand!.Value, 0.005);
    }

    [Fact]
    public void What_grows_by_a_share_grows_from_what_there_is_and_only_whole_devices_count()
    {
        var result = YearsJob.Years(YearsJob.Of("devices: {phone: 50 %}", batteries: "batteries: 0 years"), 3);
        // 2, 3, 4.5, 6.75
        Assert.Equal([0, 1, 2, 4], result.Years.Select(year => year.Added.Sum(added => added.Count)));
    }

    [Theory]
    [InlineData(1, null, 1)]
    [InlineData(5, null, 5)]
    [InlineData(1.5, 2.0, 1.5)]
    [InlineData(2, 2.0, 2)]
    [InlineData(2.5, 2.0, 0.5)]
    [InlineData(4, 2.0, 2)]
    public void Dust_gathers_until_it_is_taken_out(double years, double? every, double since) => Assert.Equal(since, Rates.SinceCleaning(years, every), 1e-9);

    // Less air, a warmer inlet, a higher fan level: what dust does comes out at the ear.
    [Fact]
    public void Dust_warms_the_inlet_and_is_heard_at_the_desk_and_touches_nothing_else()
    {
        var file = Repository.PathOf("examples/barn-vets/job.yaml");
        var job = JobFile.Parse(File.ReadAllText(file), file, YearsJob.Models).Value!;
        var dusty = YearsPolicy.None with { Devices = [], AirLost = Make.Given(new Share(0.5)) };
        var turns = YearsStudy.Of(job with { Policy = job.Policy with { Years = dusty } }, YearsJob.Models, StudyRequest.Whole(YearsJob.Today), 7)
            .Turns.Where(turn => turn.By == Change.Dust).ToList();
        Assert.Equal(["heat", "sound"], turns.Select(turn => turn.Entry.Discipline).Distinct().Order());
        Assert.Contains(turns, turn => turn.Entry.Id == "heat/sw-1/inlet");
    }

    [Fact]
    public void A_kind_that_the_survey_has_not_is_asked_for_and_a_model_is_taken()
    {
        var kind = YearsJob.Years(YearsJob.Of("devices: {camera: 1}"), 1);
        Assert.Contains("which model is an added camera?", kind.Rates.Single(rate => rate.What == "camera").Question, StringComparison.Ordinal);
        Assert.Equal(0, kind.Years[1].Added[0].Count);
        var model = YearsJob.Years(YearsJob.Of("devices: {sanderling: 1}"), 1);
        Assert.Equal((1, null), (model.Years[1].Added[0].Count, model.Years[1].Added[0].Like));
    }

    [Fact]
    public void Warranties_run_from_the_day_of_the_unit_else_from_the_handing_over()
    {
        var result = YearsJob.Years(YearsJob.Of("devices: {}, installed: 2026-12-01, warranty: 2 years, tests: {plugs: 2 years}", batteries: "batteries: 0 years, since: 2025-06-01"));
        Assert.Equal(
            [("ups-1", new DateOnly(2027, 6, 1)), ("site", new DateOnly(2028, 12, 1)), ("sw-1", new DateOnly(2029, 12, 1))],
            result.Dues.Where(due => !due.What.StartsWith("batteries", StringComparison.Ordinal)).Select(due => (due.Subject, due.On!.Value)));
    }

    [Fact]
    public void Without_a_day_of_handing_over_the_day_is_asked_for() => Assert.All(
        YearsJob.Years(YearsJob.Of("devices: {}, warranty: 2 years, tests: {plugs: 2 years}")).Dues.Where(due => !due.What.StartsWith("batteries", StringComparison.Ordinal)),
        due => Assert.NotNull(due.Question));
}

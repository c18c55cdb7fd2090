using Headroom.Domain.Ledgers;

namespace Headroom.Engineering.Tests.Standby;

/// <summary>What must go on working: everything on its way on a battery, and back in time. All figures are invented.</summary>
public sealed class KeptEntriesTests
{
    private static readonly OutageJob.Of Job = new();

    [Fact]
    public void With_all_of_its_way_on_a_battery_it_goes_on_working()
    {
        var entry = Job.Entry("phone/on-battery");
        Assert.Equal((Verdict.Clear, 2.0, 2.0), (entry.Studied, entry.Demand!.Value, entry.Limit!.Value));
    }

    [Fact]
    public void What_is_missing_on_the_way_is_named()
    {
        var entry = (Job with { Standby = "{model: keeper, in: closet}" }).Entry("phone/on-battery");
        Assert.Equal(Verdict.Short, entry.Studied);
        Assert.Contains("router on the way to the line is on no battery", entry.Story.Say(entry), StringComparison.Ordinal);
        var both = (Job with { Switch = "model: box", Standby = "{model: keeper, in: closet}", Line = "" }).Entry("phone/on-battery");
        Assert.Contains("sw-1 and line on the way to the line are on no battery", both.Story.Say(both), StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_switched_off_to_spare_the_battery_does_not_go_on_working()
    {
        var entry = (Job with { Standby = "{model: keeper, in: closet, also: {router: 9 W}, sheds: {low: 5 min, high: 9 min}}" }).Entry("phone/on-battery");
        Assert.Equal(Verdict.Short, entry.Studied);
        Assert.Contains("phone-1 after 9 min and phone-2 after 9 min are switched off", entry.Story.Say(entry), StringComparison.Ordinal);
    }

    [Fact]
    public void A_switch_or_a_single_endpoint_may_be_kept_too()
    {
        var job = Job with { Outage = "{keep: [sw-1, cam-1]}" };
        Assert.Equal(Verdict.Clear, job.Entry("sw-1/on-battery").Studied);
        Assert.Equal(Verdict.Clear, job.Entry("cam-1/on-battery").Studied);
    }

    [Fact]
    public void It_works_again_when_the_last_of_device_switch_and_line_is_there()
    {
        // 80 s for the switch, half a second for detection, then one port after the other, and 40 s for the phone: later than the line's 90 s.
        Assert.InRange(Job.Entry("phone/back").Demand!.Value * 60, 120.5, 122);
        Assert.Equal(4, (Job with { Line = "lines: {line: {boxes: [router], boot: 4 min}}" }).Entry("phone/back").Demand!.Value, 1e-9);
    }

    [Fact]
    public void Too_late_is_short_and_a_time_nobody_knows_is_asked_for()
    {
        Assert.Equal(Verdict.Short, (Job with { Outage = "{keep: [phone], back within: 2 min}" }).Entry("phone/back").Studied);
        Assert.Contains("boxes at the line", (Job with { Line = "" }).Entry("phone/back").Question, StringComparison.Ordinal);
        Assert.Contains("how long does mute take to start", (Job with { Endpoints = "{phone-1: {model: mute}, phone-2: {model: handset}, ap-1: {model: dish}, ap-2: {model: dish}, cam-1: {model: eye}}" }).Entry("phone/back").Question, StringComparison.Ordinal);
        Assert.Contains("how long does slow-box take to start", (Job with { Switch = "model: slow-box, fed-by: ups-1" }).Entry("phone/back").Question, StringComparison.Ordinal);
    }

    [Fact]
    public void Phones_that_stay_dark_are_short_however_soon_the_others_are_back()
    {
        var job = Job with
        {
            Endpoints = "{phone-1: {model: handset}, ap-1: {model: dish}, ap-2: {model: dish}, ap-3: {model: dish}, ap-4: {model: dish}}",
            Patch = "{ap-1: sw-1/1, ap-2: sw-1/2, ap-3: sw-1/3, ap-4: sw-1/4, phone-1: sw-1/5}",
            Switch = "model: box, fed-by: ups-1, port-limit: {5: 7 W}, reserves-by: class, at-start: class, at-refusal: stop, priority: {ap-1: high}",
        };
        // 4 x 30 W and the 7 W of a class 2 phone fit 130 W; a fifth access point does not, and stops all behind it.
        Assert.Equal(Verdict.Clear, job.Entry("phone/back").Studied);
        var full = job with
        {
            Endpoints = job.Endpoints.Replace("phone-1:", "ap-5: {model: dish}, phone-1:", StringComparison.Ordinal),
            Patch = "{ap-1: sw-1/1, ap-2: sw-1/2, ap-3: sw-1/3, ap-4: sw-1/4, ap-5: sw-1/5, phone-1: sw-1/6}",
        };
        var entry = full.Entry("phone/back");
        Assert.Equal((Verdict.Short, 0.0), (entry.Studied, entry.Limit!.Value));
        Assert.Contains("phone-1 stays dark", entry.Story.Say(entry), StringComparison.Ordinal);
    }

    [Fact]
    public void The_supply_of_a_switch_is_judged_while_everything_starts()
    {
        var entry = Job.Entry("sw-1/restart");
        // All start at once: 2 x 4 + 2 x 12 + 8 W, the losses of the runs, and at most one inrush of 0.45 A at 54 V.
        Assert.InRange(entry.Demand!.Value, 18 + 40, 18 + 48 + 24.4);
        Assert.Equal(170, entry.Limit);
    }
}

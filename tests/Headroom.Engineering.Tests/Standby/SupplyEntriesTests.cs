using Headroom.Domain.Ledgers;

namespace Headroom.Engineering.Tests.Standby;

/// <summary>Watts, volt-amperes and minutes of a standby supply. All figures are invented; the sums stand beside them.</summary>
public sealed class SupplyEntriesTests
{
    private static readonly OutageJob.Of Job = new();

    [Fact]
    public void What_it_feeds_counts_the_losses_of_the_switch_and_what_else_hangs_on_it()
    {
        var entry = Job.Entry("ups-1/watts");
        // At their most the ports give 2 x 5 + 2 x 15 + 8 W and the losses of runs not known; 18 W and 90 % come on top, and the router.
        Assert.InRange(entry.Demand!.Value, (18 + 48) / 0.9 + 9, (18 + 56) / 0.9 + 9);
        Assert.Equal(Verdict.Clear, entry.Studied);
    }

    [Fact]
    public void Volt_amperes_are_judged_beside_watts_with_the_power_factor_of_each()
    {
        var (watts, apparent) = (Job.Entry("ups-1/watts"), Job.Entry("ups-1/volt-amperes"));
        Assert.Equal((watts.Demand!.Value - 9) / 0.95 + 9 / 0.9, apparent.Demand!.Value, 1e-9);
        Assert.Contains(apparent.Assumed, said => said.Contains("power factor of 1 load", StringComparison.Ordinal));
    }

    [Fact]
    public void The_watts_up_to_which_the_ports_may_go_fill_the_supply_exactly()
    {
        var entry = Job.Entry("ups-1/watts");
        var cap = entry.Story.Holds(entry).Single(row => row.Input == "watts at the ports of sw-1").AtLimit!.Value;
        Assert.Equal(300, (18 + cap) / 0.9 + 9, 1e-6);
    }

    [Fact]
    public void Minutes_are_told_new_aged_and_cold_and_the_last_carries_the_verdict()
    {
        var entry = Job.Entry("ups-1/runtime");
        Assert.Equal(["new, at 25 °C", "aged, at 25 °C", "aged and cold"], entry.Beside.Select(row => row.Name));
        Assert.Equal(entry.Beside.Select(row => row.Limit).OrderDescending(), entry.Beside.Select(row => row.Limit));
        Assert.Equal(entry.Limit, entry.Beside[^1].Limit);
        Assert.NotNull(entry.PlusMinus);
    }

    [Fact]
    public void Minutes_can_be_followed_by_hand()
    {
        var result = Job.Outages.Supplies[0];
        // 12 °C is 53.6 °F: 1.19 - 0.72 x 0.04 by the table; 1.25 for age.
        var load = (10 + result.Stages[0].Watts / 0.88) * 1.25 * (1.19 - 0.72 * 0.04);
        var minutes = 60 * Math.Pow(load / 2 / 60, Math.Log(300.0 / 60) / Math.Log(16.0 / 60));
        Assert.InRange(load / 2, 16, 60);
        Assert.Equal(minutes, Job.Entry("ups-1/runtime").Limit!.Value, 1e-9);
    }

    [Fact]
    public void Without_a_wish_there_is_a_figure_and_no_verdict()
    {
        var job = Job with { Outage = "{}" };
        Assert.False(job.Has("ups-1/runtime"));
        Assert.Contains(job.Ledger.Figures, figure => figure.Id == "standby/ups-1/minutes");
    }

    [Fact]
    public void The_design_s_own_wish_comes_before_the_policy_s() =>
        Assert.Equal(35, (Job with { Standby = "{model: keeper, also: {router: 9 W}, runtime: 35 min}" }).Entry("ups-1/runtime").Demand);

    [Fact]
    public void A_load_heavier_than_the_table_is_short_where_more_than_its_first_row_is_wanted_and_unknown_otherwise()
    {
        var heavy = Job with { Standby = "{model: keeper, in: closet, also: {router: 400 W}}" };
        var entry = heavy.Entry("ups-1/runtime");
        Assert.Equal((Verdict.Short, 5.0), (entry.Studied, entry.Limit!.Value));
        Assert.Contains("less than 5 min", entry.Story.Say(entry), StringComparison.Ordinal);
        var little = (heavy with { Outage = "{runtime: 4 min}" }).Entry("ups-1/runtime");
        Assert.Equal(Verdict.Unknown, little.Studied);
        Assert.Contains("more than its table goes up to", little.Question, StringComparison.Ordinal);
    }

    [Fact]
    public void A_load_below_the_table_takes_its_last_row_and_says_so()
    {
        var entry = (Job with { Switch = "model: box", Standby = "{model: keeper, in: closet, also: {router: 4 W}}" }).Entry("ups-1/runtime");
        Assert.Equal(300, entry.Limit!.Value, 1e-9);
        Assert.Contains(entry.Assumed, said => said.Contains("it holds longer", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("riddle", "how many minutes does riddle hold")]
    [InlineData("keeper, batteries: 2 years", null)]
    public void What_is_not_known_of_the_supply_is_asked(string model, string? question)
    {
        var entry = (Job with { Standby = $"{{model: {model}, in: closet}}" }).Entry("ups-1/runtime");
        Assert.Equal(question is null, entry.Question is null);
        if (question is not null)
            Assert.Contains(question, entry.Question, StringComparison.Ordinal);
    }

    [Fact]
    public void A_supply_on_which_nothing_hangs_is_asked_about()
    {
        var entry = (Job with { Switch = "model: box", Standby = "{model: keeper}" }).Entry("ups-1/runtime");
        Assert.Equal(Verdict.Unknown, entry.Studied);
        Assert.Contains("what hangs on ups-1", entry.Question, StringComparison.Ordinal);
    }

    [Fact]
    public void A_battery_past_its_life_counts_half_and_is_to_be_changed()
    {
        var old = (Job with { Standby = "{model: keeper, in: closet, batteries: 9 years, also: {router: 9 W}}", Outage = "{runtime: 60 min}" }).Entry("ups-1/runtime");
        Assert.Contains("put new batteries into ups-1", old.Advice);
        Assert.Contains(CautionTable.Battery, old.Cautions);
        Assert.True(old.Limit < Job.Entry("ups-1/runtime").Limit);
    }

    [Fact]
    public void Declared_minutes_and_a_law_from_the_capacity_stand_in_for_a_table()
    {
        var sheet = Job with { Standby = "{model: sheet, in: closet, also: {router: 9 W}}" };
        Assert.NotNull(sheet.Entry("ups-1/runtime").Limit);
        var rough = (Job with { Standby = "{model: rough, in: closet, also: {router: 9 W}}" }).Entry("ups-1/runtime");
        Assert.Contains(rough.Assumed, said => said.Contains("rough", StringComparison.Ordinal));
        Assert.True(rough.PlusMinus / rough.Limit > sheet.Entry("ups-1/runtime").PlusMinus / sheet.Entry("ups-1/runtime").Limit);
    }

    [Fact]
    public void Lithium_below_freezing_is_not_told()
    {
        var entry = (Job with { Standby = "{model: light, in: closet, also: {router: 9 W}}", Closet = "{winter: -4 °C}" }).Entry("ups-1/runtime");
        Assert.Equal(Verdict.Unknown, entry.Studied);
        Assert.Contains("how cold", entry.Question, StringComparison.Ordinal);
    }

    [Fact]
    public void Switching_off_what_matters_less_gives_minutes_and_both_methods_are_shown()
    {
        var (all, staged) = (Job.Entry("ups-1/runtime"), (Job with { Standby = "{model: keeper, in: closet, also: {router: 9 W}, sheds: {low: 5 min}}" }).Entry("ups-1/runtime"));
        Assert.True(staged.Limit > all.Limit);
        var steps = staged.Story.Work(staged).Steps.Select(step => step.Sum).ToList();
        Assert.Contains("by share used", steps);
        Assert.Contains("by sections", steps);
    }

    [Fact]
    public void The_latest_moment_to_switch_off_just_keeps_the_minutes_wanted()
    {
        var job = Job with { Outage = "{runtime: 80 min}" };
        Assert.Equal(Verdict.Short, job.Entry("ups-1/runtime").Studied);
        var latest = job.Ledger.Figures.Single(figure => figure.Id == "standby/ups-1/latest-shed").Value!.Value;
        OutageJob.Of At(double minutes) => job with { Standby = FormattableString.Invariant($"{{model: keeper, in: closet, also: {{router: 9 W}}, sheds: {{low: {minutes * 60:0.###} s}}}}") };
        Assert.Equal(80, At(latest).Entry("ups-1/runtime").Limit!.Value, 0.01);
        Assert.Equal(Verdict.Short, At(latest + 0.1).Entry("ups-1/runtime").Studied);
    }

    [Fact]
    public void Phones_of_low_priority_that_are_kept_are_not_advised_away()
    {
        var job = Job with { Outage = "{runtime: 80 min, keep: [phone]}", Switch = "model: box, fed-by: ups-1" };
        Assert.DoesNotContain(job.Entry("ups-1/runtime").Advice, advice => advice.Contains("low priority", StringComparison.Ordinal));
    }

    [Fact]
    public void An_outage_at_night_counts_the_lamps_of_cameras() =>
        Assert.Equal(Headroom.Engineering.Power.PowerState.Night, Job.Outages.Supplies[0].State);

    [Fact]
    public void Fahrenheit_gives_the_minutes_of_Celsius() =>
        Assert.Equal(Job.Entry("ups-1/runtime").Limit!.Value, (Job with { Closet = "{summer: 82.4 F, winter: 53.6 F}" }).Entry("ups-1/runtime").Limit!.Value, 1e-6);

    [Fact]
    public void A_draw_nobody_knows_makes_the_sum_at_least_and_the_minutes_unknown()
    {
        var job = Job with { Endpoints = "{phone-1: {model: ling}}", Patch = "{phone-1: sw-1/1}", Switch = "model: box, fed-by: ups-1", Outage = "{runtime: 20 min}" };
        Assert.Equal(Verdict.Unknown, job.Entry("ups-1/runtime").Studied);
        Assert.NotEmpty(job.Entry("ups-1/runtime").Question!);
    }
}

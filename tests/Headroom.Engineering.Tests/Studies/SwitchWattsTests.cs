using Headroom.Domain.Jobs;
using Headroom.Domain.Ledgers;

namespace Headroom.Engineering.Tests.Studies;

/// <summary>The watts of a switch in every state and setting. Class powers: IEEE Std 802.3, Table 33-1 (15.4 and 30 W); the rest is invented.</summary>
public sealed class SwitchWattsTests
{
    private static readonly PowerSetting ByClass = PowerSetting.Silent with { ReservesBy = ReservesBy.Class };

    private static Site Aps(int count, double budget, PowerSetting? setting = null) => new Site()
        .Switch("sw-1", budget, setting ?? ByClass)
        .Model(Site.Device("ap", 4, typical: 6.1, peak: 11.7, start: 9.3))
        .PutMany(count, "ap", "sw-1");

    [Fact]
    public void By_class_the_last_ports_stay_dark_although_what_is_drawn_would_fit()
    {
        var entry = Aps(9, 250).Entry("power/sw-1/watts");
        Assert.Equal(270, entry.Demand!.Value, 1e-9);
        Assert.Equal(-20, entry.Left!.Value, 1e-9);
        Assert.Equal(Verdict.Short, entry.Studied);
        Assert.Contains("ap-9 stays dark", entry.Story.Say(entry), StringComparison.Ordinal);
        Assert.DoesNotContain("ap-8", entry.Story.Say(entry), StringComparison.Ordinal);
    }

    [Fact]
    public void A_reserve_that_is_kept_exactly_is_kept()
    {
        // 8 x 30 W of 300 W leaves 60 W, a fifth to the last digit.
        Assert.Equal(Verdict.Clear, Aps(8, 300).Entry("power/sw-1/watts").Studied);
        Assert.Equal(Verdict.Tight, Aps(8, 299.9).Entry("power/sw-1/watts").Studied);
        Assert.Equal(Verdict.Tight, Aps(8, 240).Entry("power/sw-1/watts").Studied);
        Assert.Equal(Verdict.Short, Aps(8, 239.9).Entry("power/sw-1/watts").Studied);
    }

    [Fact]
    public void A_port_that_does_not_fit_is_skipped_or_stops_all_behind_it_as_the_setting_says()
    {
        Site Mixed(AtRefusal at) => new Site().Switch("sw-1", 40, ByClass with { AtRefusal = at })
            .Model(Site.Device("ap", 4, 6, 12, 9)).Model(Site.Device("phone", 2, 2, 4, 3))
            .Put("a", "ap", "sw-1/1").Put("b", "ap", "sw-1/2").Put("c", "phone", "sw-1/3");
        Assert.Contains("so b stays dark", Said(Mixed(AtRefusal.Skip)), StringComparison.Ordinal);
        Assert.Contains("so b and c stay dark", Said(Mixed(AtRefusal.Stop)), StringComparison.Ordinal);
    }

    [Fact]
    public void A_critical_port_is_served_before_a_lower_number()
    {
        var setting = ByClass with { EndpointPriorities = new Dictionary<string, Priority> { ["ap-3"] = Priority.Critical } };
        Assert.Contains("so ap-2 stays dark", Said(Aps(3, 65, setting)), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(ShedOrder.HighestPortFirst, "ap-4 is dropped")]
    [InlineData(ShedOrder.LowestPortFirst, "ap-1 is dropped")]
    public void By_what_is_drawn_ports_are_dropped_in_the_order_of_the_setting(ShedOrder order, string said)
    {
        var site = Aps(4, 45, PowerSetting.Silent with { ReservesBy = ReservesBy.Measured, ShedOrder = order });
        Assert.Contains(said, Said(site), StringComparison.Ordinal);
    }

    [Fact]
    public void Night_is_a_state_of_its_own_where_a_device_has_one()
    {
        var site = new Site().Switch("sw-1", 100, PowerSetting.Silent with { ReservesBy = ReservesBy.Measured })
            .Model(Site.Device("camera", 3, typical: 3.3, peak: 5.1, start: 4.2, night: 9.4)).PutMany(6, "camera", "sw-1");
        var entry = site.Entry("power/sw-1/watts");
        Assert.Contains("night", entry.What, StringComparison.Ordinal);
        Assert.True(entry.Demand > 6 * 9.4, "the losses of the runs count too");
        Assert.Contains(entry.Beside, row => row is { Group: "state", Name: "in an ordinary hour" } && row.Demand < 6 * 4.2);
    }

    [Fact]
    public void At_restart_class_counts_only_where_the_setting_says_so()
    {
        var measured = PowerSetting.Silent with { ReservesBy = ReservesBy.Measured };
        Assert.Equal(Verdict.Clear, Aps(8, 150, measured).Entry("power/sw-1/watts").Studied);
        var entry = Aps(8, 150, measured with { AtStart = AtStart.Class }).Entry("power/sw-1/watts");
        Assert.Equal(Verdict.Short, entry.Studied);
        Assert.Contains("restart", entry.What, StringComparison.Ordinal);
        Assert.Contains("ap-6, ap-7 and ap-8 stay dark", entry.Story.Say(entry), StringComparison.Ordinal);
    }

    [Fact]
    public void With_retries_refused_ports_come_up_in_waves_once_others_have_settled()
    {
        var setting = PowerSetting.Silent with { ReservesBy = ReservesBy.Measured, AtStart = AtStart.Class, Retries = true };
        var entry = Aps(8, 150, setting).Entry("power/sw-1/watts");
        Assert.Equal((Verdict.Tight, 150.0), (entry.Studied, entry.Demand!.Value));
        Assert.Contains("come up in waves: at once they would ask 240 W", entry.Story.Say(entry), StringComparison.Ordinal);
        Assert.Contains(entry.Beside, row => row.Name == "after an outage" && row.Note.Contains("waves", StringComparison.Ordinal));
    }

    [Fact]
    public void Watts_of_two_switches_are_never_one_pot()
    {
        var site = new Site().Switch("sw-1", 60, ByClass).Switch("sw-2", 600, ByClass)
            .Model(Site.Device("ap", 4, 6, 12, 9)).PutMany(3, "ap", "sw-1");
        Assert.Equal(Verdict.Short, site.Entry("power/sw-1/watts").Studied);
        Assert.Equal(Verdict.Clear, site.Entry("power/sw-2/watts").Studied);
    }

    [Fact]
    public void A_missing_draw_makes_a_sum_at_least_and_the_question_names_the_model()
    {
        var measured = PowerSetting.Silent with { ReservesBy = ReservesBy.Measured };
        var site = new Site().Switch("sw-1", 100, measured).Model(Site.Device("ap", 4, 6, 12, 9)).Model(Site.Device("riddle", 3))
            .Put("a", "ap", "sw-1/1").Put("b", "riddle", "sw-1/2");
        var entry = site.Entry("power/sw-1/watts");
        Assert.Equal(Verdict.Unknown, entry.Studied);
        Assert.Equal(new KnownParts(1, 2), entry.Parts);
        Assert.Contains("riddle", entry.Question, StringComparison.Ordinal);
        Assert.Contains("at least", entry.Story.Say(entry), StringComparison.Ordinal);
    }

    [Fact]
    public void A_sum_is_short_when_its_known_part_already_is()
    {
        var measured = PowerSetting.Silent with { ReservesBy = ReservesBy.Measured };
        var site = new Site().Switch("sw-1", 10, measured).Model(Site.Device("ap", 4, 6, 12, 9)).Model(Site.Device("riddle", 3))
            .Put("a", "ap", "sw-1/1").Put("b", "riddle", "sw-1/2");
        Assert.Equal(Verdict.Short, site.Entry("power/sw-1/watts").Studied);
    }

    [Fact]
    public void A_budget_nobody_knows_is_asked_for()
    {
        var entry = new Site().Switch("sw-1", (double?)null, ByClass).Model(Site.Device("ap", 4, 6, 12, 9)).PutMany(2, "ap", "sw-1").Entry("power/sw-1/watts");
        Assert.Equal(Verdict.Unknown, entry.Studied);
        Assert.Null(entry.Left);
        Assert.Contains("supply of sw-1", entry.Question, StringComparison.Ordinal);
    }

    [Fact]
    public void Counting_otherwise_for_one_study_changes_the_setting_in_one_step()
    {
        var site = Aps(9, 250);
        Assert.Equal(Verdict.Clear, site.Entry("power/sw-1/watts", new CountAs(null, ReservesBy.Measured)).Studied);
        Assert.Equal(Verdict.Clear, site.Entry("power/sw-1/watts", new CountAs("sw-1", ReservesBy.Measured)).Studied);
        Assert.Equal(Verdict.Short, site.Entry("power/sw-1/watts", new CountAs("sw-2", ReservesBy.Measured)).Studied);
    }

    [Fact]
    public void What_is_stated_for_the_start_stays_when_the_way_of_reserving_changes()
    {
        // By what is drawn it fits, but the model still sets class aside at the start: 9 x 30 W of 250 W.
        var site = Aps(9, 250, ByClass with { AtStart = AtStart.Class });
        var entry = site.Entry("power/sw-1/watts", new CountAs(null, ReservesBy.Measured));
        Assert.Equal((Verdict.Short, 270.0), (entry.Studied, entry.Demand!.Value));
        Assert.DoesNotContain(site.Entry("power/sw-1/watts").Advice, advice => advice.Contains("measured", StringComparison.Ordinal));
    }

    [Fact]
    public void The_port_limit_that_is_advised_mends_it_when_it_is_set()
    {
        var entry = Aps(9, 250).Entry("power/sw-1/watts");
        Assert.Contains("a port limit of 15.4 W on ports 1-9 mends it at no cost", entry.Advice[0], StringComparison.Ordinal);
        var limits = Enumerable.Range(1, 9).ToDictionary(port => port, _ => Site.W(15.4));
        var mended = Aps(9, 250, ByClass with { PortLimits = limits }).Entry("power/sw-1/watts");
        Assert.Equal(9 * 15.4, mended.Demand!.Value, 1e-9);
        Assert.Equal(Verdict.Clear, mended.Studied);
    }

    [Fact]
    public void A_negotiated_allocation_counts_with_the_worst_loss_or_as_the_device_says()
    {
        // 13.0 W at the device is 13.977 W at the port (reference row R-2, IEEE Std 802.3 Equation 33-2).
        var device = Site.Device("ap", 4, 6, 11, 9);
        device = device with { Power = device.Power! with { Asks = Site.W(13.0) } };
        Site Of(NegotiatedCounts counts) => new Site().Model(device)
            .Switch("sw-1", 300, PowerSetting.Silent with { ReservesBy = ReservesBy.Negotiated, AtStart = AtStart.Draw, NegotiatedCounts = counts }).PutMany(1, "ap", "sw-1");
        Assert.Equal(13.977, Of(NegotiatedCounts.Port).Entry("power/sw-1/watts").Demand!.Value, 0.0005);
        Assert.Equal(13.0, Of(NegotiatedCounts.Device).Entry("power/sw-1/watts").Demand!.Value, 1e-9);
    }

    [Fact]
    public void The_other_settings_stand_beside_it_without_verdict()
    {
        var rows = Aps(9, 250).Entry("power/sw-1/watts").Beside.Where(row => row.Group == "setting").ToList();
        Assert.Equal(6, rows.Count);
        Assert.Contains(rows, row => row.Name.StartsWith("by what is drawn", StringComparison.Ordinal) && row.Demand < 120);
        Assert.Contains(rows, row => row.Name.StartsWith("by port limit", StringComparison.Ordinal) && row.Demand is 270);
    }

    [Fact]
    public void How_many_more_fit_is_answered_within_the_reserve()
    {
        // 320 W less a fifth is 256 W: 8 of class 4 take 240 W, none more fits; 6 take 180 W, and two more do.
        var answer = Aps(8, 320).Study().Answers.Single(a => a.Question.StartsWith("How many", StringComparison.Ordinal));
        Assert.StartsWith("None with the reserve kept: 80 W are left, and the reserve wants 64 W", answer.Text, StringComparison.Ordinal);
        var none = Aps(9, 250).Study().Answers.Single(a => a.Question.StartsWith("How many", StringComparison.Ordinal));
        Assert.StartsWith("None with the reserve kept: 20 W are missing already", none.Text, StringComparison.Ordinal);
        var more = Aps(6, 320).Study().Answers.Single(a => a.Question.StartsWith("How many", StringComparison.Ordinal));
        Assert.Contains("2 ap (30 W each)", more.Text, StringComparison.Ordinal);
        Assert.Contains("16 powered ports left", answer.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void The_heat_that_stays_is_what_comes_in_less_what_leaves_on_the_cables()
    {
        var ledger = Aps(4, 250).Study();
        double Of(string id) => ledger.Figures.Single(figure => figure.Id == id).Value!.Value;
        var typical = ledger.Entries.Single(e => e.Id == "power/sw-1/watts").Beside.First(row => row.Group == "state");
        var drawn = Aps(4, 250).Entry("power/sw-1/watts", new CountAs(null, ReservesBy.Measured)).Beside.First(row => row.Name == "in an ordinary hour").Demand!.Value;
        Assert.NotNull(typical.Demand);
        Assert.Equal((20 + drawn) / 0.9, Of("power/sw-1/mains"), 1e-9);
        Assert.Equal(Of("power/sw-1/mains") - drawn, Of("power/sw-1/heat"), 1e-9);
    }

    private static string Said(Site site)
    {
        var entry = site.Entry("power/sw-1/watts");
        return entry.Story.Say(entry);
    }
}

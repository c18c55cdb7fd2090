using Headroom.Domain.Catalogues;
using Headroom.Domain.Ledgers;
using Headroom.Domain.Quantities;
using Headroom.Engineering.Tests.Cabling;

namespace Headroom.Engineering.Tests.Studies;

/// <summary>One device on one port: what it asks, what it is granted, what reaches it, and what must never be plugged together.</summary>
public sealed class PortPowerTests
{
    private static Site On(PoeType? type, EndpointModel device, double? metres = 30, PassiveOutput? passive = null, bool on = false) => new Site()
        .Switch("sw-1", Site.Model("m", 300, type, 24, passive), null, on ? [1] : null)
        .Model(device).Put("x", device.Id, "sw-1/1", metres);

    [Fact]
    public void A_class_4_device_in_a_24_V_passive_port_is_told_with_where_why_and_what_would_mend_it()
    {
        var ledger = On(PoeType.Type2, Site.Device("ap", 4, 6, 12, 9), passive: Site.Passive(24), on: true).Study();
        var entry = ledger.Entries.Single(e => e.Id == "power/x/start-volts");
        Assert.Equal(Verdict.Short, entry.Studied);
        Assert.Equal((42.0, 24.0), (entry.Demand!.Value, entry.Limit!.Value));
        Assert.Contains("sw-1/1 puts a passive 24 V on its pins all the time", entry.Story.Say(entry), StringComparison.Ordinal);
        Assert.Contains(entry.Cautions, caution => caution.Code == "ALWAYS-ON");
        Assert.Contains("switch the passive voltage of sw-1/1 off", entry.Advice[0], StringComparison.Ordinal);
    }

    [Fact]
    public void A_device_that_finds_no_port_at_all_is_told_and_does_not_end_the_study()
    {
        var ledger = On(PoeType.Type2, Site.Device("ap", 4, 6, 12, 9)).Model(Site.Radio("radio", 20, 28, 7)).Put("y", "radio", null, null).Study();
        var entry = Assert.Single(ledger.Entries, e => e.Studied == Verdict.Short);
        Assert.Contains("no powered port", entry.Story.Say(entry), StringComparison.Ordinal);
    }

    [Fact]
    public void An_injector_whose_only_device_it_cannot_start_owes_nothing_and_asks_nothing()
    {
        var entry = new Site().Injector("feed", null, Site.Passive(24, always: true), 22).Model(Site.Device("ap", 4, 6, 12, 9)).Put("x", "ap", "feed", 30).Entry("power/feed/watts");
        Assert.Equal((Verdict.Clear, 0.0), (entry.Studied, entry.Demand!.Value));
        Assert.Null(entry.Question);
    }

    [Fact]
    public void A_passive_radio_on_a_port_that_looks_for_a_class_stays_dark_unharmed()
    {
        var entry = On(PoeType.Type2, Site.Radio("radio", 20, 28, 7)).Entry("power/x/watts");
        Assert.Equal(Verdict.Short, entry.Studied);
        Assert.Equal(0, entry.Limit);
        Assert.Contains("unharmed", entry.Story.Say(entry), StringComparison.Ordinal);
        Assert.Empty(entry.Cautions);
    }

    [Fact]
    public void Forty_eight_passive_volts_into_a_24_V_radio_are_a_hazard()
    {
        var entry = On(null, Site.Radio("radio", 20, 28, 7), passive: Site.Passive(48, always: true)).Entry("power/x/most-volts");
        Assert.Equal(Verdict.Short, entry.Studied);
        Assert.Equal(-20, entry.Left!.Value, 1e-9);
        Assert.Contains(entry.Cautions, caution => caution.Code == "OVER-VOLTS");
    }

    [Fact]
    public void A_computer_on_an_always_on_port_is_a_hazard_and_an_unknown_device_a_question()
    {
        var pc = Site.Device("pc", null) with { Power = null };
        Assert.Equal(Verdict.Short, On(null, pc, passive: Site.Passive(24, always: true)).Entry("power/x/pins").Studied);
        Assert.DoesNotContain(On(PoeType.Type2, pc).Study().Entries, entry => entry.Subject == "x");
    }

    [Fact]
    public void A_port_without_power_leaves_its_device_dark()
    {
        var entry = On(null, Site.Device("ap", 4, 6, 12, 9)).Entry("power/x/watts");
        Assert.Equal((Verdict.Short, 0.0), (entry.Studied, entry.Limit!.Value));
    }

    [Fact]
    public void A_run_that_cannot_carry_the_load_has_no_operating_point_and_says_so()
    {
        // 100 m of 24 AWG at 24 V carry at most 17.1 W (reference row LC-15, by hand: 24² / (4 x 8.42)).
        var entry = On(null, Site.Radio("radio", 12, 30, 18), 100, Site.Passive(24, always: true)).Entry("power/x/volts");
        Assert.Equal(Verdict.Short, entry.Studied);
        Assert.Null(entry.Limit);
        Assert.Contains("no voltage settles", entry.Story.Say(entry), StringComparison.Ordinal);
    }

    [Fact]
    public void Volts_at_the_far_end_agree_with_the_worked_run_of_the_reference()
    {
        // power-and-cabling/LC-15: 24 V, 100 m of 24 AWG at 20 °C, 8.5 W: 20.5099 V at the far end, 9.9464 W at the source.
        var site = On(null, Site.Radio("radio", 18, 30, 8.5), 100, Site.Passive(24, always: true));
        Assert.Equal(20.5099, site.Entry("power/x/volts").Limit!.Value, 0.0005);
        Assert.Equal(9.9464, site.Entry("power/x/watts").Demand!.Value, 0.0005);
    }

    [Fact]
    public void Volts_that_hold_while_it_runs_but_not_while_it_starts_make_a_restart_loop()
    {
        var radio = Site.Radio("radio", 20, 28, 6);
        radio = radio with { Draws = new Dictionary<string, Given<Watts>> { ["typical"] = Site.W(6), ["peak"] = Site.W(6), ["start"] = Site.W(13) } };
        var entry = On(null, radio, 90, Site.Passive(24, always: true)).Entry("power/x/volts");
        Assert.Equal(Verdict.Short, entry.Studied);
        Assert.Contains("restarts again and again", entry.Story.Say(entry), StringComparison.Ordinal);
    }

    [Fact]
    public void A_higher_class_than_the_port_grants_is_demotion_and_what_it_takes_decides()
    {
        var modest = On(PoeType.Type2, Site.Device("ap", 6, 14, 24, 18)).Entry("power/x/watts");
        Assert.Equal(Verdict.Clear, modest.Studied);
        Assert.Contains("class 6 as 4", modest.What, StringComparison.Ordinal);
        Assert.Equal(Verdict.Short, On(PoeType.Type2, Site.Device("ap", 6, 14, 44, 18)).Entry("power/x/watts").Studied);
        var stubborn = Site.Device("ap", 6, 14, 24, 18);
        stubborn = stubborn with { Power = stubborn.Power! with { WhenDemoted = WhenDemoted.StaysDark } };
        Assert.Equal(Verdict.Short, On(PoeType.Type2, stubborn).Entry("power/x/watts").Studied);
    }

    [Fact]
    public void A_length_nobody_surveyed_is_asked_for_and_never_taken_as_nothing()
    {
        var entry = On(PoeType.Type2, Site.Device("ap", 4, 6, 12, 9), metres: null).Entry("power/x/volts");
        Assert.Equal(Verdict.Unknown, entry.Studied);
        Assert.Null(entry.Limit);
        Assert.Contains("how long is K-x?", entry.Question, StringComparison.Ordinal);
    }

    [Fact]
    public void A_class_device_on_a_high_rush_of_current_or_a_deep_sleep_is_found()
    {
        var device = Site.Device("lamp", 3, 6, 9, 8);
        device = device with { Power = device.Power! with { InputCapacitance = Make.Given(new Farads(600e-6)), LeastDraw = Site.W(0.3) } };
        var ledger = On(PoeType.Type2, device).Study();
        // 600 µF to 54 V at 0.4 A take 81 ms of the 50 ms allowed; 0.3 W at 54 V are 5.6 mA of the 10 mA needed.
        Assert.Equal(81, ledger.Entries.Single(e => e.Id == "power/x/inrush").Demand!.Value, 0.5);
        Assert.Equal(5.56, ledger.Entries.Single(e => e.Id == "power/x/keep-alive").Limit!.Value, 0.005);
        Assert.All(ledger.Entries.Where(e => e.Quantity is "inrush" or "keep-alive"), e => Assert.Equal(Verdict.Short, e.Studied));
    }

    [Fact]
    public void An_injector_counts_its_own_watts_and_amperes_with_the_loss_of_the_run()
    {
        var site = new Site().Switch("sw-1", 100.0).Injector("inj-1", null, Site.Passive(24, 0.5), 12)
            .Model(Site.Radio("radio", 18, 28, 8.5)).Put("x", "radio", "inj-1", 100);
        Assert.Equal(9.9464, site.Entry("power/inj-1/watts").Demand!.Value, 0.0005);
        Assert.Equal(0.41443, site.Entry("power/inj-1/amperes").Demand!.Value, 0.00002);
        Assert.Equal(Verdict.Tight, site.Entry("power/inj-1/watts").Studied);
    }

    [Fact]
    public void Every_caution_appears_when_triggered_and_on_no_harmless_figure()
    {
        var clad = On(PoeType.Type2, Site.Device("ap", 4, 6, 12, 9));
        clad.Clad = true;
        clad.Put("y", "ap", "sw-1/2");
        var mixed = On(PoeType.Type2, Site.Device("ap", 4, 6, 12, 9), passive: Site.Passive(24), on: true).Put("y", "ap", "sw-1/2");
        var bigger = Site.Model("two", 100) with { Supplies = [Site.Supply(100), Site.Supply(400) with { Id = "large" }] };
        var dc = Site.Model("dc", 100) with { Supplies = [Site.Supply(100, rated: 150) with { Input = "dc" }] };
        var all = new[]
        {
            clad, mixed, On(null, Site.Radio("radio", 20, 28, 7), passive: Site.Passive(48, always: true)),
            new Site().Switch("sw-1", bigger).Model(Site.Device("ap", 4, 6, 12, 9)).PutMany(4, "ap", "sw-1"),
            new Site().Switch("sw-1", dc).Model(Site.Device("ap", 4, 6, 12, 9)).PutMany(1, "ap", "sw-1"),
        };
        var cables = CableJob.Study(
            "K-1: {from: closet, to: room, length: 9 m, cable: plain, by: pipe}\nF-1: {from: closet, to: room, length: 9 m, cable: glass-4}",
            "pathways: {pipe: {kind: conduit, inside: 30 mm, already: none, mains beside: 2 circuits of 16 A, barrier: none, apart: 40 mm, bends: 4, bend radius: 20 mm}}",
            "designs: {d: {switches: {sw-1: {model: box}}, uplinks: [{from: sw-1/25, to: line, module: ten, drop: F-1}]}}");
        var loud = Acoustics.SoundSite.Yard with { Listener = "at: 2.5 x 1.5 x 1.2 m, limit: 35 dB(A)" };
        var rain = Traffic.NetworkJob.Study("link: {model: dish, traffic: {stream: 29 Mb/s}}", "switches: {sw-1: {model: box}}, patch: {link: sw-1/1}");
        var warm = new Heat.HeatSite
        {
            Spaces = new Heat.HeatSite().Spaces.Replace("28 °C", "48 °C", StringComparison.Ordinal), Racks = "A: {in: room, height: 6 U}",
            Switches = "sw-1: {model: fanned, in: box, fan: weak}, sw-2: {model: still, in: A, unit: 1}, sw-3: {model: still, in: A, unit: 2}",
        };
        var seen = all.Select(site => site.Study()).Append(cables).Append(loud.Study()).Append(warm.Study()).Append(rain).Append(Racking.RackJob.Dangerous()).Append(new Standby.OutageJob.Of { Outage = "{runtime: 5 h}" }.Ledger).SelectMany(ledger => ledger.Entries).SelectMany(entry => entry.Cautions).Select(caution => caution.Code).ToHashSet();
        Assert.Equal(CautionTable.All.Select(caution => caution.Code).ToHashSet(), seen);
        Assert.All(On(PoeType.Type2, Site.Device("ap", 4, 6, 12, 9)).Study().Entries, entry => Assert.Empty(entry.Cautions));
    }
}

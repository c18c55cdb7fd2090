using Headroom.Domain.Ledgers;

namespace Headroom.Engineering.Tests.Racking;

/// <summary>Racks of small made-up sites.</summary>
public sealed class RackEntriesTests
{
    private const string Rack = "racks: {A: {in: closet, height: 4 U, depth: 400 mm, load: 30 kg, plugs behind: 55 mm}}";

    private static Ledger With(string design, string survey = Rack, string policy = "{reserve: {rack: 1 U, weight: 10 %}}") => RackJob.Study(survey, design, policy: policy);

    [Fact]
    public void Units_depth_and_weight_are_counted_with_plugs_and_fittings()
    {
        var ledger = With("switches: {sw-1: {model: box, in: A, unit: 3}}, standby: {ups-1: {model: block, in: A, unit: 1}}, fittings: {p: {kind: panel, in: A, unit: 4, height: 1 U, weight: 1 kg}}");
        Assert.Equal((4.0, 4.0, Verdict.Tight), (ledger.At("racking/A/units").Demand, ledger.At("racking/A/units").Limit, ledger.At("racking/A/units").Studied));
        Assert.Equal((355.0, 400.0), (Math.Round(ledger.At("racking/sw-1/depth").Demand!.Value, 9), ledger.At("racking/sw-1/depth").Limit));
        Assert.Equal(Verdict.Short, ledger.At("racking/ups-1/depth").Studied);
        Assert.Equal(26, ledger.At("racking/A/weight").Demand!.Value, 1e-9);
    }

    [Fact]
    public void The_depth_up_to_which_it_holds_is_the_depth_of_the_rack_less_the_plugs()
    {
        var entry = With("switches: {sw-1: {model: box, in: A}}").At("racking/sw-1/depth");
        Assert.Equal(345, entry.Story.Holds(entry)[0].AtLimit!.Value, 1e-9);
    }

    [Fact]
    public void What_has_no_place_gets_one_that_fits_heavy_things_low()
    {
        var ledger = With("switches: {sw-1: {model: box, in: A}, sw-2: {model: box, in: A}}, standby: {ups-1: {model: block, in: A}}");
        Assert.Equal(Verdict.Clear, ledger.At("racking/A/place").Studied);
        Assert.Contains("ups-1 at 1 to 2 (proposed)", Assert.Single(ledger.Answers, answer => answer.Question == "What goes where?").Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Free_units_that_do_not_lie_together_hold_nothing_of_two()
    {
        var ledger = With("switches: {sw-1: {model: box, in: A, unit: 2}}, standby: {ups-1: {model: block, in: A}}", "racks: {A: {in: closet, height: 3 U, depth: 600 mm, load: 90 kg}}");
        Assert.Equal(Verdict.Short, ledger.At("racking/A/place").Studied);
        Assert.NotEqual(Verdict.Short, ledger.At("racking/A/units").Studied);
    }

    [Fact]
    public void What_has_no_ears_needs_a_shelf()
    {
        Assert.Equal(Verdict.Short, With("switches: {sw-1: {model: desk, in: A}}").At("racking/A/shelves").Studied);
        var shelf = With("switches: {sw-1: {model: desk, in: A}, sw-2: {model: desk, in: A}}, fittings: {s: {kind: shelf, in: A, height: 1 U}}").At("racking/A/shelves");
        Assert.Equal((Verdict.Clear, 420.0, 450.0), (shelf.Studied, shelf.Demand!.Value, shelf.Limit!.Value));
    }

    [Fact]
    public void What_nobody_measured_is_asked_for_and_stops_nothing_else()
    {
        var ledger = With("switches: {sw-1: {model: blank, in: A}}", "racks: {A: {in: closet}}");
        Assert.Contains("how high is rack A?", ledger.At("racking/A/units").Question, StringComparison.Ordinal);
        Assert.Contains("how deep is rack A", ledger.At("racking/sw-1/depth").Question, StringComparison.Ordinal);
        Assert.Contains("what may rack A carry?", ledger.At("racking/A/weight").Question, StringComparison.Ordinal);
        Assert.Contains("how heavy is sw-1?", With("switches: {sw-1: {model: blank, in: A}}").At("racking/A/weight").Question, StringComparison.Ordinal);
        Assert.All(ledger.Entries.Where(entry => entry.Discipline == "racking"), entry => Assert.Equal(Verdict.Unknown, entry.Studied));
    }

    [Fact]
    public void A_cabinet_says_what_the_survey_leaves_out()
    {
        var ledger = With("switches: {sw-1: {model: box, in: A}}", "racks: {A: {in: closet, cabinet: bay}}");
        Assert.Equal((27.0, 741.0, 390.0), (ledger.At("racking/A/units").Limit, Math.Round(ledger.At("racking/sw-1/depth").Limit!.Value, 6), ledger.At("racking/A/weight").Limit));
    }

    [Fact]
    public void Plugs_are_counted_against_outlets_of_wall_and_battery()
    {
        var ledger = With(
            "switches: {sw-1: {model: box, in: A, fed-by: ups-1}, sw-2: {model: box, in: A, fed-by: ups-1}, sw-3: {model: box, in: A, fed-by: ups-1}}, standby: {ups-1: {model: block, in: A}}",
            "racks: {A: {in: closet, height: 12 U, outlets: 1}}");
        Assert.Equal((1.0, 1.0, Verdict.Clear), (ledger.At("racking/A/outlets").Demand, ledger.At("racking/A/outlets").Limit, ledger.At("racking/A/outlets").Studied));
        Assert.Equal((3.0, 2.0, Verdict.Short), (ledger.At("racking/ups-1/outlets").Demand, ledger.At("racking/ups-1/outlets").Limit, ledger.At("racking/ups-1/outlets").Studied));
    }

    [Fact]
    public void A_strip_carries_the_watts_of_the_study_of_power_and_asks_for_its_voltage()
    {
        string Strip(string volts) => $"switches: {{sw-1: {{model: box, in: A}}, sw-2: {{model: box, in: A}}}}, fittings: {{strip: {{kind: outlets, in: A, places: 4, most: 10 A{volts}}}}}";
        var entry = With(Strip(", volts: 230 V")).At("racking/strip/amperes");
        // By hand: twice 18 W / 0.9 efficiency, over 230 V and 0.9.
        Assert.Equal(40 / 230.0 / 0.9, entry.Demand!.Value, 1e-6);
        Assert.Contains("which mains voltage", With(Strip("")).At("racking/strip/amperes").Question, StringComparison.Ordinal);
    }

    [Fact]
    public void Cords_reach_from_switch_to_panel_and_managers_take_them()
    {
        var ledger = RackJob.Study(
            "racks: {A: {in: closet, height: 12 U, depth: 600 mm, load: 90 kg}}\ndrops: {K-1: {from: closet, to: room, length: 20 m, cable: plain, panel cord: 0.5 m of plain}}\nendpoints: {h: {model: handset, drop: K-1}}",
            "switches: {sw-1: {model: box, in: A, unit: 2}}, fittings: {p: {kind: panel, in: A, unit: 9, height: 1 U}, m: {kind: manager, in: A, unit: 8, height: 1 U, places: 1}}, patch: {K-1: sw-1/1}");
        var entry = ledger.At("racking/sw-1/cords");
        Assert.Equal((482.6 + 7 * 44.45 + 200, 500.0, Verdict.Short), (Math.Round(entry.Demand!.Value, 6), entry.Limit!.Value, entry.Studied));
        Assert.Equal((1.0, 1.0), (ledger.At("racking/A/managers").Demand, ledger.At("racking/A/managers").Limit));
    }

    [Fact]
    public void A_stack_needs_feet_and_a_door_needs_room()
    {
        var ledger = RackJob.Study("racks: {A: {in: closet, height: 6 U, depth: 600 mm, load: 90 kg, front: 40 mm}}", "switches: {sw-1: {model: desk, in: room}, sw-2: {model: desk, in: room, on: sw-1}, sw-3: {model: box, in: A}, sw-4: {model: box, in: room, on: sw-2}}");
        Assert.Equal((3.0, 2.0, Verdict.Short), (ledger.At("racking/sw-2/feet").Demand, ledger.At("racking/sw-2/feet").Limit, ledger.At("racking/sw-2/feet").Studied));
        Assert.Contains("has sw-4 feet?", ledger.At("racking/sw-4/feet").Question, StringComparison.Ordinal);
        Assert.Equal((59.0, 40.0, Verdict.Short), (ledger.At("racking/A/front").Demand, ledger.At("racking/A/front").Limit, ledger.At("racking/A/front").Studied));
    }

    [Fact]
    public void A_wall_must_hold_rack_and_contents_and_the_wall_is_warned_of()
    {
        var entry = RackJob.Study("racks: {A: {in: closet, cabinet: alcove, fixed: wall, fixing load: 20 kg}}", "switches: {sw-1: {model: box, in: A}}").At("racking/A/fixing");
        Assert.True(entry.Demand > 4);
        Assert.Contains(entry.Cautions, caution => caution.Code == "WALL-LOAD");
        Assert.Contains("how heavy is A?", RackJob.Dangerous().Entries.Where(e => e.Id == "racking/B/fixing").Select(e => e.Question ?? "how heavy is A?").Single().Replace("B", "A", StringComparison.Ordinal), StringComparison.Ordinal);
    }

    [Fact]
    public void Feet_and_pounds_give_the_ledger_that_metres_and_kilograms_give()
    {
        var metric = With("switches: {sw-1: {model: box, in: A}}", "racks: {A: {in: closet, height: 6 U, depth: 406.4 mm, load: 45.359237 kg, plugs behind: 50.8 mm, front: 76.2 mm}}", "{reserve: {depth: 25.4 mm}}");
        var other = With("switches: {sw-1: {model: box, in: A}}", "racks: {A: {in: closet, height: 6 U, depth: 16 in, load: 100 lb, plugs behind: 2 in, front: 3 in}}", "{reserve: {depth: 1 in}}");
        Assert.Equal(metric.Entries.Select(e => (e.Id, e.Studied)), other.Entries.Select(e => (e.Id, e.Studied)));
        Assert.All(metric.Entries.Zip(other.Entries), pair => Assert.Equal(pair.First.Left ?? 0, pair.Second.Left ?? 0, 1e-6));
    }

    [Fact]
    public void Every_entry_says_itself_works_itself_out_and_keeps_its_words_short()
    {
        foreach (var entry in RackJob.Dangerous().Entries)
        {
            Assert.True(entry.What.Length <= 24 || entry.Discipline != "racking", entry.What);
            Assert.NotEmpty(entry.Story.Say(entry));
            Assert.NotEmpty(entry.Story.Work(entry).Source);
            Assert.NotNull(entry.Story.Holds(entry));
        }
    }
}

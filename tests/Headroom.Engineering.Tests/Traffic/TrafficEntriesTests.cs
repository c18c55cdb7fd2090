using Headroom.Domain.Ledgers;

namespace Headroom.Engineering.Tests.Traffic;

public sealed class TrafficEntriesTests
{
    private const string Two = "switches: {sw-1: {model: box}, sw-2: {model: box}}, uplinks: [{from: sw-1/8, to: line}, {from: sw-2/8, to: sw-1/7}]";

    private const string Cameras = "cam-1: {model: cam}\ncam-2: {model: cam}\ncam-3: {model: cam}";

    [Fact]
    public void Pictures_load_the_uplink_and_stay_in_the_house()
    {
        var ledger = NetworkJob.Study(Cameras, Two + ", patch: {cam-1: sw-2/1, cam-2: sw-2/2, cam-3: sw-1/1}", "lines: {line: {down: 50 Mb/s, up: 10 Mb/s}}");
        Assert.Equal(8, ledger.The("traffic/sw-2/uplink").Demand!.Value, 9);
        Assert.Equal(1000, ledger.The("traffic/sw-2/uplink").Limit);
        Assert.Equal(0, ledger.The("traffic/line/up").Demand);
        Assert.NotEmpty(ledger.The("traffic/sw-2/uplink").Assumed);
    }

    [Fact]
    public void A_recorder_in_the_closet_of_the_cameras_takes_them_off_the_uplink()
    {
        var ledger = NetworkJob.Study(
            Cameras + "\nnvr: {model: tower, recorder: {disks: 2, disk size: 2 TB, parity: 0, free: 0 %, keep: 30 d}}",
            Two + ", patch: {cam-1: sw-2/1, cam-2: sw-2/2, cam-3: sw-2/3, nvr: sw-2/4}");
        Assert.Equal(0, ledger.The("traffic/sw-2/uplink").Demand);
        Assert.Equal(12, ledger.The("traffic/nvr/port").Demand!.Value, 9);
        // 4 TB against 12 Mb/s, that is 129.6 GB a day.
        Assert.Equal(4000 / 129.6, ledger.The("traffic/nvr/days").Limit!.Value, 9);
        Assert.Equal(Verdict.Clear, ledger.The("traffic/nvr/days").Verdict);
    }

    [Fact]
    public void A_recorder_at_the_other_closet_is_reached_down_its_uplink() => Assert.Equal(
        8,
        NetworkJob.Study("cam-1: {model: cam}\ncam-2: {model: cam}\nnvr: {model: tower, recorder: {disks: 1, disk size: 8 TB, keep: 1 d}}", Two + ", patch: {cam-1: sw-1/1, cam-2: sw-1/2, nvr: sw-2/4}")
            .The("traffic/sw-2/uplink").Demand!.Value,
        9);

    [Fact]
    public void A_bundle_carries_what_its_links_do_together() => Assert.Equal(
        2000,
        NetworkJob.Study(Cameras, "switches: {sw-1: {model: box}, sw-2: {model: box}}, uplinks: [{from: sw-2/8, to: sw-1/8}, {from: sw-2/7, to: sw-1/7}], patch: {cam-1: sw-2/1, cam-2: sw-2/2, cam-3: sw-2/3}")
            .The("traffic/sw-2/uplink").Limit);

    [Fact]
    public void A_module_sets_the_rate_and_without_one_the_slowest_is_taken()
    {
        var patch = "patch: {cam-1: sw-2/1, cam-2: sw-2/2, cam-3: sw-2/3}";
        var with = NetworkJob.Study(Cameras, "switches: {sw-1: {model: box}, sw-2: {model: box}}, uplinks: [{from: sw-2/9, to: sw-1/9, media: fibre, module: quick}], " + patch).The("traffic/sw-2/uplink");
        var without = NetworkJob.Study(Cameras, "switches: {sw-1: {model: box}, sw-2: {model: box}}, uplinks: [{from: sw-2/9, to: sw-1/9}], " + patch).The("traffic/sw-2/uplink");
        Assert.Equal((10_000, 1_000), (with.Limit, without.Limit));
        Assert.Contains(without.Assumed, text => text.StartsWith("module not written", StringComparison.Ordinal));
    }

    [Fact]
    public void A_line_that_is_too_slow_is_short_and_says_from_which_rate_it_would_do()
    {
        var entry = NetworkJob.Study("ap-1: {model: cell}", "switches: {sw-1: {model: box}}, uplinks: [{from: sw-1/8, to: line}], patch: {ap-1: sw-1/1}", "lines: {line: {down: 30 Mb/s, up: 30 Mb/s}}").The("traffic/line/down");
        // Of 24 users active for a tenth of the time no more than 8 are at once in 99.9 % of moments: printed row runtime/3.5/quantiles.
        Assert.Equal(40, entry.Demand!.Value, 9);
        Assert.Equal(Verdict.Short, entry.Verdict);
        var turn = Assert.Single(entry.Story.Holds(entry));
        Assert.Equal(40, turn.AtLimit!.Value, 9);
        Assert.Equal(40 / 0.7, turn.AtReserve!.Value, 9);
        Assert.Contains("30", entry.Story.Say(entry), StringComparison.Ordinal);
    }

    [Fact]
    public void A_line_of_which_nothing_is_written_is_asked_for()
    {
        var entry = NetworkJob.Study("ap-1: {model: cell}", "switches: {sw-1: {model: box}}, uplinks: [{from: sw-1/8, to: line}], patch: {ap-1: sw-1/1}").The("traffic/line/down");
        Assert.Equal(Verdict.Unknown, entry.Verdict);
        Assert.Contains("contract", entry.Question, StringComparison.Ordinal);
    }

    [Fact]
    public void A_device_of_which_nothing_is_known_leaves_the_line_unknown_and_is_named()
    {
        var entry = NetworkJob.Study("ap-1: {model: cell}\nodd: {model: thing}", "switches: {sw-1: {model: box}}, uplinks: [{from: sw-1/8, to: line}], patch: {ap-1: sw-1/1, odd: sw-1/2}", "lines: {line: {down: 300 Mb/s, up: 30 Mb/s}}").The("traffic/line/down");
        Assert.Equal((Verdict.Unknown, new KnownParts(1, 2)), (entry.Verdict, entry.Parts));
        Assert.Contains("odd", entry.Question, StringComparison.Ordinal);
    }

    [Fact]
    public void Where_nobody_wrote_any_traffic_nothing_is_said() => Assert.DoesNotContain(
        NetworkJob.Study("odd: {model: thing}", "switches: {sw-1: {model: box}}, uplinks: [{from: sw-1/8, to: line}], patch: {odd: sw-1/1}").Entries, entry => entry.Discipline == "traffic");

    [Fact]
    public void Telephones_share_calls_and_one_by_itself_has_one()
    {
        var phones = string.Join('\n', Enumerable.Range(1, 6).Select(n => $"p-{n}: {{model: handset}}"));
        var patch = string.Join(", ", Enumerable.Range(1, 6).Select(n => $"p-{n}: sw-1/{n}"));
        var ledger = NetworkJob.Study(phones, $"switches: {{sw-1: {{model: box}}}}, uplinks: [{{from: sw-1/8, to: line}}], patch: {{{patch}}}", "lines: {line: {down: 30 Mb/s, up: 30 Mb/s}}");
        Assert.Equal(0.0968, ledger.The("traffic/p-1/port").Demand!.Value, 9);
        // By Engset 6 telephones of 0.12 E find no way in 1.4 % of calls with 3 lines, in 0.1 % with 4.
        Assert.Equal(4 * 0.0968, ledger.The("traffic/line/up").Demand!.Value, 9);
    }

    [Fact]
    public void What_a_place_writes_of_itself_stands_in_place_of_its_model() => Assert.Equal(
        9,
        NetworkJob.Study("cam-1: {model: cam, traffic: {stream: 9 Mb/s}}", "switches: {sw-1: {model: box}}, patch: {cam-1: sw-1/1}").The("traffic/cam-1/port").Demand!.Value,
        9);

    [Fact]
    public void The_port_of_an_injector_is_no_faster_than_the_injector() => Assert.Equal(
        100,
        NetworkJob.Study("ap-1: {model: cell}", "switches: {sw-1: {model: box}}, injectors: {inj-1: {model: feed, from: sw-1/1}}, patch: {ap-1: inj-1}").The("traffic/ap-1/port").Limit);

    [Theory]
    [InlineData("dish", "{stream: 20 Mb/s, users: 1, down: 5 Mb/s}", Verdict.Tight)]
    [InlineData("dish", "{stream: 29 Mb/s, users: 1, down: 5 Mb/s}", Verdict.Short)]
    [InlineData("dish", "{stream: 12 Mb/s}", Verdict.Clear)]
    [InlineData("bare-dish", "{stream: 12 Mb/s}", Verdict.Unknown)]
    public void Both_ways_share_the_air_and_rain_governs(string model, string traffic, Verdict verdict)
    {
        var entry = NetworkJob.Study($"link: {{model: {model}, traffic: {traffic}}}", "switches: {sw-1: {model: box}}, patch: {link: sw-1/1}").The("traffic/link/air");
        Assert.Equal(verdict, entry.Verdict);
        Assert.Equal(verdict is Verdict.Short or Verdict.Tight, entry.Cautions.Contains(CautionTable.Height));
    }

    [Fact]
    public void A_radio_behind_which_nobody_knows_what_hangs_is_asked_for() => Assert.Contains(
        "what hangs behind it", NetworkJob.Study("link: {model: dish}", "switches: {sw-1: {model: box}}, patch: {link: sw-1/1}").The("traffic/link/air").Question, StringComparison.Ordinal);

    [Fact]
    public void A_switch_whose_maker_declares_nothing_has_no_entry_for_what_it_passes_on()
    {
        var ledger = NetworkJob.Study("cam-1: {model: cam}\nt-1: {model: tower, traffic: {users: 1, down: 20 Mb/s}}", "switches: {sw-1: {model: box}, sw-2: {model: plain}}, patch: {cam-1: sw-1/1, t-1: sw-2/1}");
        Assert.True(ledger.Holds("traffic/sw-1/switching"));
        Assert.False(ledger.Holds("traffic/sw-2/switching"));
        // Eight ports of 1 Gb/s and two of 10, both ways.
        Assert.Equal(56, ledger.The("traffic/sw-1/switching").Peak!.Value, 9);
    }

    [Fact]
    public void Disks_that_nobody_counted_are_asked_for() => Assert.Contains(
        "how many disks", NetworkJob.Study("cam-1: {model: cam}\nnvr: {model: tower, recorder: {keep: 30 d}}", "switches: {sw-1: {model: box}}, patch: {cam-1: sw-1/1, nvr: sw-1/2}").The("traffic/nvr/days").Question, StringComparison.Ordinal);

    [Fact]
    public void Every_story_tells_its_working_with_the_figure_of_the_entry()
    {
        var ledger = NetworkJob.Study(
            Cameras + "\nap-1: {model: cell}\nlink: {model: dish, traffic: {stream: 2 Mb/s}}\nnvr: {model: tower, recorder: {disks: 2, disk size: 2 TB, keep: 30 d}}",
            Two + ", patch: {cam-1: sw-2/1, cam-2: sw-2/2, cam-3: sw-1/1, ap-1: sw-1/2, link: sw-1/3, nvr: sw-1/4}", "lines: {line: {down: 50 Mb/s, up: 10 Mb/s}}");
        var entries = ledger.Entries.Where(entry => entry.Discipline == "traffic").ToList();
        Assert.True(entries.Count > 12);
        Assert.All(entries, entry =>
        {
            var work = entry.Story.Work(entry);
            Assert.NotEqual("", work.Source);
            Assert.NotEmpty(entry.Story.Say(entry));
            Assert.NotEmpty(entry.Story.Holds(entry));
            Assert.True(entry.What.Length <= 24, entry.What);
            var figure = entry.Sense == Sense.AtLeast ? entry.Limit : entry.Demand;
            Assert.Contains(work.Steps, step => step.Value is { } value && Math.Abs(value - figure!.Value) < 1e-9);
        });
    }
}

using Headroom.Domain.Ledgers;

namespace Headroom.Engineering.Tests.Heat;

/// <summary>Entries for the air at an inlet; all figures are invented, expected ones by hand.</summary>
public sealed class HeatEntryTests
{
    // Front 0.56, sides 0.7, top 0.4 m² of 18 mm board at 2.574 W/(m²·K): 4.273 W/K, so that 40 W make 9.36 K.
    private const double Rise = 40 / 4.273;

    [Fact]
    public void A_closed_cupboard_is_as_warm_as_the_room_beside_it_and_its_rise()
    {
        var entry = new HeatSite().Entry();
        Assert.Equal(28 + Rise, entry.Demand!.Value, 0.01);
        Assert.Equal(45, entry.Limit);
        Assert.Equal("inlet air, summer", entry.What);
        Assert.Equal(Verdict.Clear, entry.Studied);
        Assert.Contains(entry.Beside, row => row.Name == "weekday" && Math.Abs(row.Demand!.Value - 22 - Rise) < 0.01);
    }

    [Theory]
    [InlineData("temperature: 5 K", Verdict.Clear)]
    [InlineData("temperature: 10 K", Verdict.Tight)]
    public void The_reserve_of_the_house_counts(string policy, Verdict verdict) => Assert.Equal(verdict, (new HeatSite { Policy = policy }).Entry().Studied);

    [Fact]
    public void Of_what_is_written_of_a_cupboard_and_what_is_worked_out_the_higher_counts()
    {
        static HeatSite With(string air) => new HeatSite() with { Spaces = new HeatSite().Spaces.Replace("beside: room}", $"beside: room, temperature: {{weekday: 25 °C, summer: {air}}}}}", StringComparison.Ordinal) };
        Assert.Equal(41, With("41 °C").Inlet, 0.001);
        Assert.Equal(28 + Rise, With("33 °C").Inlet, 0.01);
        Assert.Contains("as written", With("41 °C").Entry().Story.Say(With("41 °C").Entry()), StringComparison.Ordinal);
    }

    [Fact]
    public void Too_warm_a_cupboard_is_short_and_the_vents_that_are_advised_mend_it()
    {
        var site = new HeatSite { Spaces = new HeatSite().Spaces.Replace("28 °C", "38 °C", StringComparison.Ordinal).Replace("0.7 m, walls", "1.7 m, walls", StringComparison.Ordinal), Switches = "sw-1: {model: plain, in: box}, sw-2: {model: plain, in: box}" };
        var entry = site.Entry();
        Assert.Equal(Verdict.Short, entry.Studied);
        Assert.Contains(entry.Cautions, caution => caution.Code == "CUT-VENTS");
        var advice = entry.Advice.Single(line => line.StartsWith("two vents of ", StringComparison.Ordinal));
        var words = advice.Split(' ');
        var (each, apart) = (double.Parse(words[3], System.Globalization.CultureInfo.InvariantCulture), words[Array.IndexOf(words, "m") - 1]);
        var mended = site with { Spaces = site.Spaces.Replace("vents: none", FormattableString.Invariant($"vents: {2 * each} cm2, vents apart: {apart} m"), StringComparison.Ordinal) };
        Assert.NotEqual(Verdict.Short, mended.Entry().Studied);
        Assert.True(mended.Entry().Left < 0.2, $"The vents are larger than they need be: {mended.Entry().Left} K left.");
    }

    [Theory]
    [InlineData("walls: 18 mm board, ", "what are the walls of box made of")]
    [InlineData("exposed: [front, sides, top], ", "which faces of box touch the air")]
    [InlineData("size: 0.8 x 0.5 x 0.7 m, ", "how long, wide and high is box?")]
    [InlineData(", beside: room", "how warm does it get in box?")]
    [InlineData(", temperature: {weekday: 22 °C, summer: 28 °C}", "how warm does it get in room? box is warmer than that")]
    public void What_a_cupboard_lacks_is_asked_for_and_stops_nothing_else(string missing, string question)
    {
        var ledger = (new HeatSite { Spaces = new HeatSite().Spaces.Replace(missing, "", StringComparison.Ordinal) }).Study();
        var entry = ledger.Entries.Single(e => e.Id == "heat/sw-1/inlet");
        Assert.Equal(Verdict.Unknown, entry.Studied);
        Assert.Null(entry.Demand);
        Assert.Contains(question, entry.Question, StringComparison.Ordinal);
        Assert.Contains(ledger.Entries, e => e.Id == "power/sw-1/watts");
    }

    [Fact]
    public void Words_for_walls_that_nobody_knows_are_asked_for_by_name() =>
        Assert.Contains("'felt' is not known here", (new HeatSite { Spaces = new HeatSite().Spaces.Replace("18 mm board", "felt", StringComparison.Ordinal) }).Entry().Question, StringComparison.Ordinal);

    [Fact]
    public void A_room_without_a_temperature_gives_no_reason_to_judge() =>
        Assert.Null((new HeatSite { Spaces = "room: {size: 4 x 3 x 2.5 m}", Switches = "sw-1: {model: plain, in: room}" }).Maybe());

    [Theory]
    [InlineData("22 °C", false)]
    [InlineData("36 °C", true)]
    public void A_rating_that_is_not_known_is_asked_for_only_where_it_is_warm(string air, bool asked)
    {
        var entry = (new HeatSite { Spaces = $"room: {{temperature: {air}}}", Switches = "sw-1: {model: unrated, in: room}" }).Maybe();
        Assert.Equal(asked, entry is not null);
        Assert.Equal(asked ? "for how warm an air is unrated rated? its data sheet says" : null, entry?.Question);
    }

    [Fact]
    public void A_closed_cabinet_of_steel_warms_what_stands_in_it_and_a_frame_does_not()
    {
        static double In(string cabinet) => (new HeatSite { Spaces = "room: {size: 4 x 3 x 2.5 m, temperature: 25 °C}", Racks = $"A: {{in: room, height: 6 U, cabinet: {cabinet}}}", Switches = "sw-1: {model: plain, in: A, unit: 1}" }).Inlet;
        // 0.9885 m² of 5.5 W/(m²·K), the enclosure of the reference: 40 W make 7.36 K.
        Assert.Equal(25 + 40 / (5.5 * 0.9885), In("steel"), 0.01);
        Assert.Equal(25, In("open"), 1e-9);
    }

    [Theory]
    [InlineData(", blanked: yes", 0.05)]
    [InlineData("", 0.2)]
    public void What_comes_back_of_its_own_air_is_counted_and_panels_keep_it_out(string panels, double share)
    {
        var site = new HeatSite { Spaces = "room: {size: 4 x 3 x 2.5 m, temperature: 25 °C}", Racks = $"A: {{in: room, height: 6 U{panels}}}", Switches = "sw-1: {model: moving, in: A, unit: 1}" };
        var rise = 40 * 3600 / (1.1839 * 1006 * 10);
        Assert.Equal(25 + share / (1 - share) * rise, site.Inlet, 0.01);
        Assert.Equal(rise, site.Study().Figures.Single(f => f.Id == "heat/sw-1/outlet-rise").Value!.Value, 0.01);
    }

    [Fact]
    public void Height_takes_air_off_a_rating_and_has_a_limit_of_its_own()
    {
        var site = new HeatSite { Survey = "altitude: 1500 m" };
        Assert.Equal(43, site.Entry().Limit!.Value, 1e-9);
        Assert.Equal(500, site.Entry("heat/sw-1/altitude").Left!.Value, 1e-9);
        Assert.Equal(Verdict.Short, (site with { Survey = "altitude: 2400 m" }).Entry("heat/sw-1/altitude").Studied);
        Assert.Null(new HeatSite().Maybe("heat/sw-1/altitude"));
    }

    [Fact]
    public void Cold_below_a_rating_is_short_as_well()
    {
        var entry = (new HeatSite { Spaces = "yard: {kind: outdoors, temperature: {winter: -14 °C, summer: 30 °C}}", Switches = "sw-1: {model: plain, in: yard}" }).Entry("heat/sw-1/cold");
        Assert.Equal(Verdict.Short, entry.Studied);
        Assert.Equal(-14, entry.Left!.Value, 1e-9);
    }

    [Fact]
    public void Boxes_without_fans_on_each_other_are_a_hazard()
    {
        var site = new HeatSite { Spaces = "room: {size: 4 x 3 x 2.5 m, temperature: 25 °C}", Racks = "A: {in: room, height: 6 U}", Switches = "sw-1: {model: still, in: A, unit: 1}, sw-2: {model: still, in: A, unit: 2}" };
        Assert.Contains(site.Entry().Cautions, caution => caution.Code == "HOT-STACK");
        Assert.Empty((site with { Switches = site.Switches.Replace("unit: 2", "unit: 4", StringComparison.Ordinal) }).Entry().Cautions);
        // Row FL-1: 12 W in a box of that size make 29.1 K.
        Assert.Equal(29.1, site.Study().Figures.Single(f => f.Id == "heat/sw-1/case-rise").Value!.Value, 0.05);
    }

    [Fact]
    public void Feet_and_Fahrenheit_come_to_the_same()
    {
        var metric = new HeatSite().Entry();
        var imperial = (new HeatSite { Spaces = new HeatSite().Spaces.Replace("22 °C", "71.6 F", StringComparison.Ordinal).Replace("28 °C", "82.4 F", StringComparison.Ordinal).Replace("0.8 x 0.5 x 0.7 m", "2.624672 x 1.640420 x 2.296588 ft", StringComparison.Ordinal).Replace("18 mm", "0.708661 in", StringComparison.Ordinal) }).Entry();
        Assert.Equal(metric.Demand!.Value, imperial.Demand!.Value, 0.001);
        Assert.Equal(metric.Studied, imperial.Studied);
    }

    [Fact]
    public void Every_entry_of_a_place_says_up_to_where_it_holds_and_it_is_true()
    {
        var entry = new HeatSite().Entry();
        var rows = entry.Story.Holds(entry);
        var watts = rows.Single(row => row.Unit == "W").AtLimit!.Value;
        Assert.Equal(17 * 4.273, watts, 0.05);
        var air = rows.Single(row => row.Input == "air around box").AtLimit!.Value;
        Assert.Equal(0, (new HeatSite { Spaces = new HeatSite().Spaces.Replace("28 °C", FormattableString.Invariant($"{air} °C"), StringComparison.Ordinal) }).Entry().Left!.Value, 0.001);
        Assert.Equal(entry.Demand!.Value, entry.Story.Work(entry).Steps.Single(step => step.Name == "air at the inlet").Value!.Value, 1e-9);
    }
}

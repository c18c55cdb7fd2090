using Headroom.Domain.Ledgers;

namespace Headroom.Engineering.Tests.Heat;

/// <summary>Another fan in a switch; all figures are invented.</summary>
public sealed class FanChangeTests
{
    private static HeatSite With(string fan, string model = "fanned") => new()
    {
        Spaces = "room: {size: 4 x 3 x 2.5 m, temperature: 25 °C}", Switches = $"sw-1: {{model: {model}, in: room, fan: {fan}}}",
    };

    [Theory]
    [InlineData("maker", Verdict.Clear)]
    [InlineData("strong", Verdict.Clear)]
    [InlineData("weak", Verdict.Short)]
    [InlineData("high", Verdict.Short)]
    [InlineData("dumb", Verdict.Tight)]
    [InlineData("shapeless", Verdict.Unknown)]
    public void A_changed_fan_is_judged_by_the_air_it_leaves(string fan, Verdict verdict)
    {
        var entry = With(fan).Entry("heat/sw-1/fan");
        Assert.Equal(verdict, entry.Studied);
        Assert.Contains(entry.Cautions, caution => caution.Code == "OPEN-CASE");
        Assert.Equal(verdict == Verdict.Unknown, entry.Question is not null);
    }

    [Fact]
    public void A_fan_for_fewer_volts_is_refused_as_a_hazard()
    {
        var complaint = Assert.Single(With("low").Complaints, text => text.Contains("RUL056", StringComparison.Ordinal));
        Assert.Contains("made for 5 V", complaint, StringComparison.Ordinal);
    }

    [Fact]
    public void A_fan_that_may_not_start_moves_nothing()
    {
        var entry = With("high").Entry("heat/sw-1/fan");
        Assert.Equal(0, entry.Limit);
        Assert.Contains("may not start on the 12 V", entry.Story.Say(entry), StringComparison.Ordinal);
    }

    [Fact]
    public void A_weaker_fan_is_quieter_and_leaves_the_air_warmer()
    {
        double Rise(string fan) => With(fan).Study().Figures.Single(f => f.Id == "heat/sw-1/outlet-rise").Value!.Value;
        Assert.True(Rise("weak") > 1.2 * Rise("maker"));
        Assert.Contains("12 dB lower", With("weak").Entry("heat/sw-1/fan").Story.Say(With("weak").Entry("heat/sw-1/fan")), StringComparison.Ordinal);
    }

    [Fact]
    public void What_does_not_fit_is_said()
    {
        var said = With("dumb").Entry("heat/sw-1/fan").Story.Say(With("dumb").Entry("heat/sw-1/fan"));
        Assert.Contains("fixing holes", said, StringComparison.Ordinal);
        Assert.Contains("2 wires where the maker's has 3", said, StringComparison.Ordinal);
        Assert.Contains("reports no speed", said, StringComparison.Ordinal);
    }

    [Fact]
    public void Where_nobody_knows_the_makers_fan_it_is_asked_for() =>
        Assert.Contains("which fan has moving?", With("weak", "moving").Entry("heat/sw-1/fan").Question, StringComparison.Ordinal);

    private static HeatSite Air(string air) => With("maker, air: {" + air + "}");

    private static LedgerEntry Changed(string air) => Air(air).Entry("heat/sw-1/fan");

    // By hand: the maker's fan moves 10 m³/h at 36 Pa, so k = 0.36 Pa/(m³/h)². A 45 % grille in 38 mm has ζ 5.700 and takes
    // 5.700 · 1.2041 / (2 · 0.0011341²) / 3600² = 0.2059; without it 0.1541 is left, and the curve, 36 Pa at 10 and 0 at 17, meets it where 0.1541 q² = 36 − 5.1429 (q − 10).
    [Fact]
    public void An_opened_grille_gives_more_air_and_less_sound_where_the_air_is_held()
    {
        var entry = Changed("opening: 38 mm, grille: 45 %, grille then: 100 %");
        Assert.Equal(10, entry.Demand!.Value, 1e-9);
        var q = (-5.142857 + Math.Sqrt(5.142857 * 5.142857 + 4 * 0.1541 * 87.42857)) / (2 * 0.1541);
        Assert.Equal(q, entry.Limit!.Value, 0.01);
        var held = entry.Story.Work(entry).Steps.Single(step => step.Name.StartsWith("the same where", StringComparison.Ordinal)).Value!.Value;
        Assert.Equal(50 * Math.Log10(10 / q), held, 0.02);
        Assert.Contains("Blades are within reach", entry.Story.Say(entry), StringComparison.Ordinal);
        double Rise(HeatSite site) => site.Study().Figures.Single(f => f.Id == "heat/sw-1/outlet-rise").Value!.Value;
        Assert.Equal(10 / q, Rise(Air("opening: 38 mm, grille: 45 %, grille then: 100 %")) / Rise(With("maker")), 0.001);
    }

    [Theory]
    [InlineData("opening: 38 mm, gap: 10 mm, gap then: 40 mm", Verdict.Clear)]
    [InlineData("opening: 38 mm, gap: 40 mm, gap then: 10 mm", Verdict.Short)]
    [InlineData("opening: 38 mm, gap: 10 mm, gap then: 10 mm", Verdict.Clear)]
    [InlineData("opening: 38 mm, gap: 10 mm", Verdict.Unknown)]
    [InlineData("grille: 45 %, grille then: 75 %", Verdict.Unknown)]
    [InlineData("opening: 38 mm", Verdict.Unknown)]
    [InlineData("opening: 20 mm, grille: 30 %, grille then: 75 %", Verdict.Unknown)]
    public void A_moved_fan_is_judged_by_the_air_it_leaves_and_what_is_missing_is_asked_for(string air, Verdict verdict)
    {
        var entry = Changed(air);
        Assert.Equal(verdict, entry.Studied);
        Assert.Equal(verdict == Verdict.Unknown, entry.Question is not null);
    }

    [Theory]
    [InlineData("opening: 38 mm, grille: 0 %, grille then: 75 %")]
    [InlineData("opening: 38 mm, gap: 10 W, gap then: 75 mm")]
    [InlineData("opening: 38 mm, gap: 0 mm, gap then: 75 mm")]
    public void A_way_of_air_that_makes_no_sense_is_refused(string air) => Assert.NotEmpty(Air(air).Complaints);
}

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
}

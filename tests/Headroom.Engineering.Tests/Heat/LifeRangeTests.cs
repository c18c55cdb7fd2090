using Headroom.Domain.Ledgers;

namespace Headroom.Engineering.Tests.Heat;

/// <summary>How long parts last is a range; the site is invented.</summary>
public sealed class LifeRangeTests
{
    private static HeatSite At(int celsius) => new()
    {
        Spaces = $"room: {{size: 4 x 3 x 2.5 m, temperature: {{weekday: {celsius} °C}}}}",
        Switches = "sw-1: {model: fanned, in: room}",
    };

    private static Figure Figure(HeatSite site, string quantity) => site.Study().Figures.Single(figure => figure.Id == $"heat/sw-1/{quantity}");

    // The inlet is the room and what comes back of 40 W in 20 m3/h: 5/95 of 5.96 K, so 40.3 °C in a room of 40 °C.
    // A ball bearing has 60 000 h at 40 °C, a sleeve bearing half; 0.3 K take 1 to 2 %.
    [Fact]
    public void Fan_bearings_last_from_the_shortest_of_a_sleeve_to_the_longest_of_a_ball()
    {
        var figure = Figure(At(40), "fan-life");
        Assert.Equal(30_000 / 8766.0, figure.Value!.Value, 0.15);
        Assert.Equal(60_000 / 8766.0, figure.UpTo!.Value, 0.15);
        Assert.Contains("rough", figure.What, StringComparison.Ordinal);
    }

    // Published rule: 2000 h at 105 °C make 32 000 h at 65 °C, here at 30 K above 35 °C; less for the 0.3 K that come back.
    [Fact]
    public void Capacitors_last_from_the_cheap_and_hot_to_what_a_claim_is_worth()
    {
        var figure = Figure(At(35), "capacitor-life");
        Assert.Equal(32_000 / 8766.0, figure.Value!.Value, 0.15);
        Assert.Equal(15, figure.UpTo!.Value, 0.01);
    }

    [Theory]
    [InlineData("fan-life")]
    [InlineData("capacitor-life")]
    public void Warmer_air_never_makes_either_end_longer(string quantity)
    {
        var (cool, warm) = (Figure(At(24), quantity), Figure(At(36), quantity));
        Assert.True(warm.Value < cool.Value);
        Assert.True((warm.UpTo ?? warm.Value) <= (cool.UpTo ?? cool.Value));
    }

    [Fact]
    public void The_entry_of_the_inlet_tells_both_ends()
    {
        var entry = At(35).Entry();
        var steps = entry.Story.Work(entry).Steps.Where(step => step.Name.EndsWith("rough", StringComparison.Ordinal)).ToList();
        Assert.Equal(4, steps.Count);
        Assert.True(steps[0].Value < steps[1].Value);
    }
}

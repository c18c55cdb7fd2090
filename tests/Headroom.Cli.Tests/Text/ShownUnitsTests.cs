namespace Headroom.Cli.Tests.Text;

public sealed class ShownUnitsTests
{
    // Published values: the foot and inch, pound and degree of NIST Special Publication 811, appendix B.8; CFM from the foot.
    [Theory]
    [InlineData("m", 90, "ft", 295.2756)]
    [InlineData("mm", 25.4, "in", 1)]
    [InlineData("°C", 45, "°F", 113)]
    [InlineData("°C", -40, "°F", -40)]
    [InlineData("K", 5, "°F", 9)]
    [InlineData("kg", 1, "lb", 2.204623)]
    [InlineData("m3/h", 1.699011, "CFM", 1)]
    [InlineData("W", 320, "W", 320)]
    [InlineData("V", 20.5, "V", 20.5)]
    [InlineData("A", 0.6, "A", 0.6)]
    public void Values_are_shown_in_the_unit_asked_for(string unit, double value, string shown, double expected)
    {
        var units = new ShownUnits(imperial: true).Of(unit);
        Assert.Equal(shown, units.Symbol);
        Assert.Equal(expected, units.Value(value)!.Value, 1e-6 * Math.Abs(expected));
    }

    [Fact]
    public void A_difference_of_temperatures_has_no_offset()
    {
        var imperial = new ShownUnits(imperial: true).Of("°C");
        Assert.Equal((9.0, "°F"), (imperial.Difference(5), imperial.Between));
        var metric = new ShownUnits(imperial: false).Of("°C");
        Assert.Equal((5.0, "K"), (metric.Difference(5), metric.Between));
        Assert.Equal("dB", new ShownUnits(imperial: false).Of("dB(A)").Between);
    }

    [Fact]
    public void What_is_not_known_stays_unknown() => Assert.Null(new ShownUnits(imperial: true).Of("m").Value(null));
}

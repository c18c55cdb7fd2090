using Headroom.Domain.Ledgers;

namespace Headroom.Engineering.Tests.Heat;

/// <summary>Readings of temperature beside predictions; all figures are invented.</summary>
public sealed class HeatReadingTests
{
    private static HeatSite Read(string at, double celsius, string more) =>
        new() { Readings = FormattableString.Invariant($"{{what: temperature, at: {at}, value: {celsius} °C, with: logger{more}}}") };

    [Fact]
    public void A_reading_in_a_cupboard_stands_beside_its_case()
    {
        var reading = Assert.Single(Read("box", 37, ", while: summer").Entry().Measured);
        Assert.Equal(37.36, reading.Predicted!.Value, 0.01);
        Assert.Contains("agrees", reading.Finding, StringComparison.Ordinal);
        Assert.False(reading.Governs);
    }

    [Fact]
    public void A_reading_well_above_or_below_says_what_that_means()
    {
        Assert.Contains("less air through the vents", Assert.Single(Read("box", 46, ", while: summer").Entry().Measured).Finding, StringComparison.Ordinal);
        Assert.Contains("a door that stood open", Assert.Single(Read("box", 29, ", while: summer").Entry().Measured).Finding, StringComparison.Ordinal);
    }

    [Fact]
    public void A_reading_at_the_inlet_in_the_warmest_case_governs()
    {
        var entry = Read("sw-1", 46, ", while: summer").Entry();
        Assert.Equal(46, entry.Demand);
        Assert.Equal(Verdict.Short, entry.Studied);
    }

    [Fact]
    public void Without_its_case_there_is_nothing_to_compare_it_with() =>
        Assert.Null(Assert.Single(Read("box", 37, "").Entry().Measured).Predicted);
}

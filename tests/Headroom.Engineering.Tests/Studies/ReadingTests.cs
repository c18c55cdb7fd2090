using Headroom.Domain.Ledgers;

namespace Headroom.Engineering.Tests.Studies;

/// <summary>Readings beside predictions; all figures are invented.</summary>
public sealed class ReadingTests
{
    private static Site Radio() => new Site().Switch("sw-1", Site.Model("m", 300, null, 24, Site.Passive(24, always: true)))
        .Model(Site.Radio("radio", 19, 28, 8.5)).Put("x", "radio", "sw-1/1", 100);

    [Fact]
    public void A_reading_near_the_expectation_agrees_and_one_far_off_names_a_likely_cause()
    {
        Assert.Contains("agrees", Radio().Read("ohms", "K-x", 16.9, "Ω").Entry("power/x/volts").Measured[0].Finding, StringComparison.Ordinal);
        var high = Radio().Read("ohms", "K-x", 26, "Ω").Entry("power/x/volts").Measured[0];
        Assert.Equal(9.16, high.Difference!.Value, 0.01);
        Assert.Contains("copper-clad", high.Finding, StringComparison.Ordinal);
    }

    [Fact]
    public void A_sound_reading_of_the_limits_own_quantity_governs_and_the_worst_case_stays_shown()
    {
        var entry = Radio().Read("volts", "x", 17.9, "V", "typical").Entry("power/x/volts");
        Assert.Equal(Verdict.Short, entry.Studied);
        Assert.Equal(17.9, entry.Limit);
        Assert.Contains(entry.Beside, row => row.Group == "worst case" && Math.Abs(row.Limit!.Value - 20.51) < 0.01);
        Assert.True(entry.Measured[0].Governs);
    }

    [Theory]
    [InlineData("night", "meter", false)]
    [InlineData("typical", null, false)]
    [InlineData("typical", "meter", true)]
    public void A_reading_in_another_state_without_instrument_or_as_an_upper_bound_does_not_govern(string during, string? with, bool bound)
    {
        var entry = Radio().Read("volts", "x", 17.9, "V", during, with, bound).Entry("power/x/volts");
        Assert.Equal(Verdict.Clear, entry.Studied);
        Assert.Single(entry.Measured);
    }

    [Fact]
    public void A_reading_of_what_nothing_predicts_is_kept_and_said()
    {
        var loose = Assert.Single(Radio().Read("sound", "desk", 47.6, "dB(A)").Study().LooseReadings);
        Assert.Equal("desk", loose.Reading.Where);
    }

    [Fact]
    public void An_overruled_entry_shows_both_verdicts()
    {
        var entry = new Site().Switch("sw-1", 20.0).Model(Site.Device("ap", 4, 6, 12, 9)).PutMany(2, "ap", "sw-1")
            .Overrule("power/sw-1/watts").Entry("power/sw-1/watts");
        Assert.Equal((Verdict.Short, Verdict.Clear), (entry.Studied, entry.Verdict));
        Assert.Equal("J. Marsh", entry.Overruled!.By);
    }

    [Fact]
    public void An_overruling_of_what_was_not_worked_out_is_said()
    {
        var ledger = Radio().Overrule("cabling/K-x/reach").Study();
        Assert.Equal("cabling/K-x/reach", Assert.Single(ledger.LooseOverrulings).Entry);
    }
}

using Headroom.Domain.Ledgers;

namespace Headroom.Engineering.Tests.Acoustics;

/// <summary>Readings of sound beside the prediction; all figures are invented.</summary>
public sealed class SoundReadingTests
{
    // 36.02 dB(A) of equipment is predicted, 36.99 with the background of 30.
    private static SoundSite Read(string reading) => SoundSite.Yard with { Readings = $"{{what: sound, {reading}, on: 2026-11-10}}" };

    private static string Finding(SoundSite site) => Assert.Single(site.Entry.Measured).Finding;

    [Fact]
    public void A_reading_that_agrees_is_weighed_with_the_prediction_by_their_precisions()
    {
        var site = Read("at: ear, value: 39 dB(A), with: class 2 meter");
        // By hand: 39 in 30 is 38.42 alone, ± √(a² 0.25 + b² 0.25 + 1.5²); the prediction 36.02 ± √(1.5² + 1²).
        Assert.InRange(site.Equipment, 36.8, 37.8);
        Assert.Contains("agrees", Finding(site), StringComparison.Ordinal);
        Assert.True(site.Entry.PlusMinus < SoundSite.Yard.Entry.PlusMinus);
        var better = Read("at: ear, value: 39 dB(A), with: class 1 meter").Equipment;
        Assert.True(better > site.Equipment, "the better the meter, the nearer to the reading");
    }

    [Fact]
    public void A_doubtful_reading_counts_where_it_is_higher_and_a_second_one_is_asked_for()
    {
        var site = Read("at: ear, value: 42 dB(A), with: class 2 meter");
        Assert.Equal(41.72, site.Equipment, 0.01);
        Assert.Contains("take a second reading", Finding(site), StringComparison.Ordinal);
        Assert.Equal(36.02, Read("at: ear, value: 31.5 dB(A), background: 28 dB(A), with: class 1 meter").Equipment, 0.01);
    }

    [Fact]
    public void A_reading_that_contradicts_is_not_put_together_and_says_where_to_look()
    {
        var site = Read("at: ear, value: 52 dB(A), with: class 2 meter");
        Assert.Equal(36.02, site.Equipment, 0.01);
        Assert.Contains("contradicts the catalogue", Finding(site), StringComparison.Ordinal);
        Assert.Contains("bearing", Finding(site), StringComparison.Ordinal);
    }

    [Fact]
    public void Less_than_3_dB_above_the_background_is_only_an_upper_bound()
    {
        var high = Read("at: ear, value: 42 dB(A), background: 40 dB(A), with: class 2 meter");
        Assert.Contains("at most 39 dB(A)", Finding(high), StringComparison.Ordinal);
        Assert.Equal(36.02, high.Equipment, 0.01);
        var low = Read("at: ear, value: 32 dB(A), with: class 2 meter");
        Assert.Equal(29, low.Equipment, 0.01);
        Assert.Contains("the bound counts", Finding(low), StringComparison.Ordinal);
    }

    [Fact]
    public void Below_its_background_a_reading_contradicts_itself()
    {
        var site = Read("at: ear, value: 29 dB(A), with: class 2 meter");
        Assert.Contains("contradict each other, take both again", Finding(site), StringComparison.Ordinal);
        Assert.Equal(36.02, site.Equipment, 0.01);
    }

    [Fact]
    public void Close_to_a_source_without_a_figure_a_reading_takes_its_place()
    {
        // By hand: 40 in 30 at 1 m over a plane: 39.54 alone, 47.52 of power, 39.54 at the ear 1 m away.
        var site = Read("at: sw-1, value: 40 dB(A), distance: 1 m, with: class 2 meter") with { Switches = "sw-1: {model: still, in: ROOM, at: 1.5 x 1.5 x 1.2 m}" };
        Assert.Equal(39.54, site.Equipment, 0.01);
        Assert.Contains("the reading counts", Finding(site), StringComparison.Ordinal);
    }

    [Fact]
    public void With_sources_of_which_nothing_is_known_a_reading_at_the_ear_is_what_counts()
    {
        var site = Read("at: ear, value: 45 dB(A), with: class 2 meter") with { Switches = "sw-1: {model: still, in: ROOM, at: 1.5 x 1.5 x 1.2 m}" };
        Assert.Equal((Verdict.Short, 45), (site.Entry.Studied, Math.Round(site.Entry.Demand!.Value, 6)));
        Assert.Contains("as read", site.Entry.What, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("at: sw-1, value: 50 dB(A), with: class 2 meter", "without its distance says nothing")]
    [InlineData("at: sw-1, value: 52 dB(A), distance: 3 cm, with: class 2 meter", "not by the distance")]
    [InlineData("at: sw-1, value: 38 dB(A), distance: 1 m, with: class 2 meter", "agrees")]
    [InlineData("at: sw-1, value: 58 dB(A), distance: 1 m, with: class 2 meter", "contradicts the catalogue")]
    public void A_reading_close_to_a_source_says_what_it_is_worth(string reading, string finding) =>
        Assert.Contains(finding, Finding(Read(reading)), StringComparison.Ordinal);

    [Fact]
    public void The_fan_level_under_which_it_was_read_is_the_one_it_is_compared_at()
    {
        var site = Read("at: ear, value: 40.4 dB(A), with: class 2 meter, while: sw-1 level 2") with { Switches = "sw-1: {model: stepped, in: ROOM, at: 1.5 x 1.5 x 1.2 m}" };
        // At level 2 40.02 is predicted; the verdict is for level 1, 30.02, shifted by little.
        Assert.Contains("agrees", Finding(site), StringComparison.Ordinal);
        Assert.InRange(site.Equipment, 29.5, 30.5);
        Assert.Equal(40.4, Assert.Single(site.Entry.Measured).Predicted!.Value, 0.1);
    }
}

using Headroom.Engineering.Cabling;

namespace Headroom.Engineering.Tests.Cabling;

/// <summary>What holds of the sums behind the entries, on every input.</summary>
public sealed class CableSumsTests
{
    private static readonly Gen<(double Celsius, bool Screened)> Air = Gen.Select(Gen.Double[20, 90], Gen.Bool);

    [Fact]
    public void A_temperature_comes_back_from_the_loss_it_brings_about() => Air.Sample(air =>
        Math.Abs(WarmLength.CelsiusForFactor(WarmLength.LossFactor(air.Celsius, air.Screened), air.Screened)!.Value - air.Celsius) < 1e-9);

    [Fact]
    public void A_cable_at_the_longest_it_may_be_loses_what_ninety_metres_do() => Air.Sample(air =>
        Math.Abs(WarmLength.LongestMetres(air.Celsius, air.Screened) * WarmLength.LossFactor(air.Celsius, air.Screened) - 90) < 1e-9);

    [Fact]
    public void Warmer_air_never_lets_a_link_be_longer_nor_does_taking_its_screen_away() => Air.Sample(air =>
        WarmLength.LongestMetres(air.Celsius + 1, air.Screened) < WarmLength.LongestMetres(air.Celsius, air.Screened)
        && WarmLength.LongestMetres(air.Celsius, screened: true) >= WarmLength.LongestMetres(air.Celsius, screened: false));

    [Fact]
    public void Cold_air_lets_no_link_be_longer_than_at_twenty_degrees() => Assert.Equal(90, WarmLength.LongestMetres(-30, screened: false));

    [Fact]
    public void Link_and_cords_together_make_up_the_channel() => Gen.Select(Gen.Double[0, 102], Gen.Double[0, 1]).Sample((link, derating) =>
        Math.Abs(link + CordRule.LongestMetres(link, derating)!.Value * (1 + derating) - CordRule.WholeMetres) < 1e-9);

    [Fact]
    public void A_link_that_takes_the_whole_channel_leaves_no_cord() => Assert.Null(CordRule.LongestMetres(102.001, 0.2));

    [Fact]
    public void A_cord_thinner_than_any_allowed_has_no_derating() => Assert.Null(CordRule.Derating(Conductor.AreaSquareMillimetres(30)));

    [Theory]
    [InlineData(0.2, true)]
    [InlineData(0.13, false)]
    public void Metric_sizes_sold_as_a_gauge_count_as_it(double squareMillimetres, bool isLink) =>
        Assert.Equal(isLink, ChannelLimits.IsThickEnough(squareMillimetres, ChannelLimits.ThinnestLinkAwg));

    private static readonly Gen<(double Heat, int Cables, double Air)> Bundles = Gen.Select(Gen.Double[0.005, 0.2], Gen.Int[1, 150], Gen.Double[-10, 55]);

    [Fact]
    public void As_many_cables_as_keep_a_rise_keep_it_and_one_more_does_not() => Bundles.Sample((heat, _, air) =>
    {
        var most = (int)BundleHeat.CablesKeeping(heat, air, 10);
        Assert.True(most == 0 || BundleHeat.RiseKelvins(heat, most, air) <= 10 + 1e-6);
        Assert.False(BundleHeat.RiseKelvins(heat, most + 1, air) <= 10 - 1e-6);
    });

    [Fact]
    public void The_rise_with_feedback_is_where_heat_and_warmth_agree() => Bundles.Sample((heat, cables, air) =>
    {
        if (BundleHeat.RiseKelvins(heat, cables, air) is not { } rise)
            return;
        Assert.Equal(rise, heat * Conductor.Factor(air + rise) * BundleHeat.Resistance(cables), 1e-9 * rise + 1e-9);
    });

    [Fact]
    public void More_heat_than_can_be_lost_is_no_rise_at_all() => Assert.Null(BundleHeat.RiseKelvins(1.4, 192, 30));

    [Fact]
    public void A_conduit_holds_as_many_cables_as_fit_and_no_more() => Gen.Select(Gen.Double[3, 10], Gen.Double[15, 110]).Sample((cable, inside) =>
    {
        var most = ConduitFill.MostCables(cable, ConduitFill.AreaSquareMillimetres(inside), 0.4);
        return ConduitFill.Share(most, cable, inside) <= 0.4 + 1e-9 && ConduitFill.Share(most + 1, cable, inside) > 0.4 - 1e-9;
    });

    [Fact]
    public void The_most_circuits_for_a_distance_need_no_more_than_it() =>
        Gen.Select(Gen.Enum<SeparationClass>(), Gen.Enum<MainsBarrier>(), Gen.Double[0, 2000]).Sample((cls, barrier, gap) =>
            MainsSeparation.MostCircuits(cls, barrier, gap) is not { } most
                ? MainsSeparation.Millimetres(cls, barrier, 500) <= gap + 1e-9
                : MainsSeparation.Millimetres(cls, barrier, most) <= gap + 1e-9 && MainsSeparation.Millimetres(cls, barrier, most + 1) > gap - 1e-9);

    [Fact]
    public void More_circuits_never_need_less_distance() => Gen.Select(Gen.Enum<SeparationClass>(), Gen.Enum<MainsBarrier>(), Gen.Int[0, 120]).Sample((cls, barrier, circuits) =>
        MainsSeparation.Millimetres(cls, barrier, circuits) <= MainsSeparation.Millimetres(cls, barrier, circuits + 1));

    [Fact]
    public void Without_mains_no_distance_is_needed() => Assert.Equal(0, MainsSeparation.Millimetres(SeparationClass.A, MainsBarrier.NoneOrPlastic, 0));

    [Fact]
    public void Two_stretches_of_fibre_lose_what_one_of_both_lengths_does() => Gen.Select(Gen.Double[0, 5000], Gen.Double[0, 5000], Gen.Double[0.1, 4]).Sample((one, other, loss) =>
        Math.Abs(FibreLoss.Decibels(one, loss, 2, 1) + FibreLoss.Decibels(other, loss, 0, 0) - FibreLoss.Decibels(one + other, loss, 2, 1)) < 1e-9);

    [Fact]
    public void Boxes_hold_all_runs_and_are_never_fewer_than_the_metres_need() => Gen.Double[1, 320].Array[0, 40].Sample(runs =>
    {
        var boxes = CableBoxes.Needed(runs);
        Assert.InRange(boxes, (int)Math.Ceiling(runs.Sum() / CableBoxes.BoxMetres - 1e-9), runs.Length * 2);
    });

    [Fact]
    public void No_run_is_joined_from_two_remainders() => Assert.Equal(2, CableBoxes.Needed([152.5, 152.5]));

    [Fact]
    public void Within_a_pair_and_between_pairs_short_runs_are_spared() => Gen.Double[0, 60].Sample(loop =>
        Unbalance.WithinLimitOhms(loop) >= 0.2 && Unbalance.BetweenLimitOhms(Unbalance.SideBySideOhms(loop), Unbalance.SideBySideOhms(loop)) >= 0.05);
}

using Headroom.Engineering.Power;

namespace Headroom.Engineering.Tests.Power;

public sealed class SupplyLossesTests
{
    private static readonly Gen<(double Base, double Poe, double Supply, double Path)> Supplies =
        Gen.Select(Gen.Double[0, 100], Gen.Double[0, 1500], Gen.Double[0.5, 1], Gen.Double[0.5, 1]);

    // Rising loads with an efficiency each.
    private static readonly Gen<(double LoadShare, double Efficiency)[]> Curves =
        Gen.Select(Gen.Double[0.05, 0.3], Gen.Double[0.6, 1]).Array[1, 6].Select(steps =>
            steps.Select((step, i) => (steps.Take(i + 1).Sum(each => each.Item1), step.Item2)).ToArray());

    [Fact]
    public void What_comes_from_the_mains_leaves_on_the_cables_or_stays_as_heat() => Supplies.Sample((own, poe, supply, path) =>
        Math.Abs(SupplyLosses.MainsWatts(own, poe, supply, path) - poe - SupplyLosses.HeatLeftWatts(own, poe, supply, path)) < 1e-9);

    [Fact]
    public void The_heat_is_the_switch_and_each_loss_on_the_way() => Supplies.Sample((own, poe, supply, path) =>
    {
        var pathLoss = poe * (1 - path) / path;
        var supplyLoss = (own + poe + pathLoss) * (1 - supply) / supply;
        return Math.Abs(SupplyLosses.HeatLeftWatts(own, poe, supply, path) - own - pathLoss - supplyLoss) < 1e-8;
    });

    [Fact]
    public void A_worse_supply_never_takes_less() => Supplies.Sample((own, poe, supply, path) =>
        SupplyLosses.MainsWatts(own, poe, supply * 0.9, path) >= SupplyLosses.MainsWatts(own, poe, supply, path));

    [Fact]
    public void Without_losses_only_the_switch_itself_heats() => Assert.Equal(35, SupplyLosses.HeatLeftWatts(35, 132, 1), 1e-12);

    [Fact]
    public void An_efficiency_between_points_lies_between_theirs() => Gen.Select(Curves, Gen.Double[0, 2]).Sample((curve, load) =>
        SupplyLosses.EfficiencyAt(load, curve) is { } found
        && found >= curve.Min(point => point.Efficiency) - 1e-12 && found <= curve.Max(point => point.Efficiency) + 1e-12);

    [Fact]
    public void The_curve_goes_through_its_points() => Curves.Sample(curve =>
        curve.All(point => Math.Abs(SupplyLosses.EfficiencyAt(point.LoadShare, curve)!.Value - point.Efficiency) < 1e-12));

    [Fact]
    public void Without_points_the_efficiency_is_unknown() => Assert.Null(SupplyLosses.EfficiencyAt(0.5, []));

    // 12000 BTU/h, one ton of cooling, is 3516.85 W by definition.
    [Fact]
    public void A_ton_of_cooling_is_12000_btu_per_hour() => Assert.Equal(12000, SupplyLosses.BtuPerHour(3516.85), 0.05);

    [Theory]
    [InlineData(0)]
    [InlineData(-0.1)]
    [InlineData(1.01)]
    [InlineData(double.NaN)]
    public void An_efficiency_lies_above_0_and_up_to_1(double efficiency) =>
        Assert.Throws<ArgumentOutOfRangeException>(nameof(efficiency), () => SupplyLosses.MainsWatts(35, 132, efficiency));
}

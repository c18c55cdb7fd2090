using Headroom.Engineering.Airflow;
using Headroom.Engineering.Heat;

namespace Headroom.Engineering.Tests.Heat;

/// <summary>What holds of heat and air on every input.</summary>
public sealed class HeatPropertyTests
{
    private static readonly Gen<(double Watts, double Area, double Apart, double Faces, double Outside)> Boxes =
        Gen.Select(Gen.Double[1, 2000], Gen.Double[0.0005, 0.2], Gen.Double[0.1, 3], Gen.Double[0, 60], Gen.Double[-20, 50]);

    private static readonly Gen<FanCurve> Curves =
        Gen.Select(Gen.Double[0.2, 1].Array[2, 9], Gen.Double[0.1, 1].Array[9], Gen.Double[5, 400]).Select((steps, falls, top) =>
        {
            var (flows, pressures) = (new double[steps.Length + 1], new double[steps.Length + 1]);
            pressures[0] = top;
            for (var i = 1; i < flows.Length; i++)
                (flows[i], pressures[i]) = (flows[i - 1] + steps[i - 1] / 1000, i == flows.Length - 1 ? 0 : pressures[i - 1] * falls[i - 1]);
            return new FanCurve(flows, pressures);
        });

    private static readonly Gen<double> Paths = Gen.Double[3, 9].Select(exponent => Math.Pow(10, exponent));

    [Fact]
    public void What_leaves_a_box_by_faces_and_vents_is_what_is_left_inside() => Boxes.Sample(b =>
    {
        var rise = Vents.Rise(b.Watts, (b.Area, b.Apart), b.Faces, b.Outside)!.Value;
        var leaves = b.Faces * rise + Air.Usual * Air.HeatPerKilogram * Vents.Flow(b.Area, b.Apart, rise, b.Outside) * rise;
        Assert.Equal(b.Watts, leaves, 1e-6 * b.Watts);
    }, iter: Long.Samples(5000));

    [Fact]
    public void More_heat_is_warmer_and_more_vent_face_or_height_is_cooler() => Boxes.Sample(b =>
    {
        var rise = Vents.Rise(b.Watts, (b.Area, b.Apart), b.Faces, b.Outside)!.Value;
        Assert.True(Vents.Rise(1.1 * b.Watts, (b.Area, b.Apart), b.Faces, b.Outside) > rise);
        Assert.True(Vents.Rise(b.Watts, (1.1 * b.Area, b.Apart), b.Faces, b.Outside) < rise);
        Assert.True(Vents.Rise(b.Watts, (b.Area, 1.1 * b.Apart), b.Faces, b.Outside) < rise);
        Assert.True(Vents.Rise(b.Watts, (b.Area, b.Apart), b.Faces + 1, b.Outside) < rise);
    }, iter: Long.Samples(5000));

    [Fact]
    public void Without_vents_it_is_the_closed_box_and_without_either_there_is_no_end() => Boxes.Sample(b =>
    {
        if (b.Faces > 0)
            Assert.Equal(ClosedBox.Rise(b.Watts, b.Faces), Vents.Rise(b.Watts, (0, b.Apart), b.Faces, b.Outside)!.Value, 1e-9 * b.Watts / b.Faces);
        Assert.Null(Vents.Rise(b.Watts, (0, b.Apart), 0, b.Outside));
        Assert.Equal(0, Vents.Rise(0, (b.Area, b.Apart), b.Faces, b.Outside));
    }, iter: Long.Samples(2000));

    [Fact]
    public void The_vents_wanted_for_a_rise_give_that_rise() => Boxes.Sample(b =>
    {
        const double kelvins = 7;
        var each = Vents.AreaFor(b.Watts, kelvins, b.Apart, b.Outside);
        Assert.Equal(kelvins, Vents.Rise(b.Watts, (Vents.Together(each, each), b.Apart), 0, b.Outside)!.Value, 1e-6);
    }, iter: Long.Samples(5000));

    [Fact]
    public void Flow_for_a_rise_and_rise_of_a_flow_are_one_sum() => Gen.Select(Gen.Double[1, 5000], Gen.Double[0.5, 50], Gen.Double[-20, 60], Gen.Double[0, 4000]).Sample((watts, kelvins, celsius, metres) =>
    {
        var density = Air.Density(celsius, metres);
        Assert.Equal(kelvins, Air.Rise(watts, Air.FlowFor(watts, kelvins, density), density), 1e-9 * kelvins);
        Assert.True(Air.Density(celsius, metres + 100) < density);
        Assert.True(Air.Density(celsius + 1, metres) < density);
    }, iter: Long.Samples(5000));

    [Fact]
    public void A_working_point_lies_on_the_curve_and_on_the_path() => Gen.Select(Curves, Paths).Sample((curve, path) =>
    {
        var point = AirPath.Meet(curve, path);
        Assert.Equal(path * point.Flow * point.Flow, point.Pressure, 1e-6 * Math.Max(1, curve.Pressures[0]));
        Assert.Equal(curve.PressureAt(point.Flow), point.Pressure, 1e-6 * Math.Max(1, curve.Pressures[0]));
        Assert.Equal(path, AirPath.ResistanceOf(curve, point.Flow)!.Value, 1e-3 * path);
    }, iter: Long.Samples(5000));

    [Fact]
    public void A_narrower_path_moves_less_and_two_fans_never_less_than_one() => Gen.Select(Curves, Paths).Sample((curve, path) =>
    {
        var flow = AirPath.Meet(curve, path).Flow;
        Assert.True(AirPath.Meet(curve, 1.5 * path).Flow <= flow);
        Assert.True(AirPath.Meet(curve.Parallel(2), path).Flow >= flow - 1e-12);
        Assert.True(AirPath.Meet(curve.Series(2), path).Flow >= flow - 1e-12);
        Assert.True(AirPath.Meet(curve.Parallel(2), path).Flow <= 2 * flow + 1e-12);
        Assert.Equal(curve.FreeFlow, AirPath.Meet(curve, 0).Flow, 1e-12);
    }, iter: Long.Samples(5000));

    [Fact]
    public void On_one_path_flow_goes_with_the_speed() => Gen.Select(Curves, Paths, Gen.Double[0.2, 2]).Sample((curve, path, ratio) =>
        Assert.Equal(ratio * AirPath.Meet(curve, path).Flow, AirPath.Meet(curve.AtSpeed(ratio), path).Flow, 1e-9), iter: Long.Samples(5000));

    [Fact]
    public void A_more_open_grille_takes_less_and_an_open_hole_nothing() => Gen.Double[0.05, 0.98].Sample(free =>
    {
        Assert.True(Grille.Coefficient(free + 0.01) < Grille.Coefficient(free));
        Assert.Equal(0, Grille.Coefficient(1), 1e-12);
    });

    [Theory]
    [InlineData(new[] { 0.0, 1, 2 }, new[] { 10.0, 12, 0 })]
    [InlineData(new[] { 0.0, 1, 1 }, new[] { 10.0, 8, 0 })]
    [InlineData(new[] { 0.0 }, new[] { 10.0 })]
    [InlineData(new[] { 0.0, 1 }, new[] { 10.0 })]
    public void A_curve_that_rises_or_is_none_is_refused(double[] flows, double[] pressures) =>
        Assert.Throws<ArgumentException>(() => new FanCurve(flows, pressures));

    [Fact]
    public void What_warms_up_reaches_all_of_it_and_the_time_for_a_share_gives_the_share() => Gen.Select(Gen.Double[0.01, 0.99], Gen.Double[10, 1e5]).Sample((share, constant) =>
    {
        Assert.Equal(share, Settling.Reached(Settling.Until(share, constant), constant), 1e-9);
        Assert.Equal(1, Settling.Reached(50 * constant, constant), 1e-9);
    });
}

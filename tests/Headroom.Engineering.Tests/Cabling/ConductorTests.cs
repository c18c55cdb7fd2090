using Headroom.Engineering.Cabling;

namespace Headroom.Engineering.Tests.Cabling;

public sealed class ConductorTests
{
    private static readonly Gen<double> Gauges = Gen.Double[-3, 40];

    [Fact]
    public void A_gauge_comes_back_from_its_cross_section() => Gauges.Sample(awg =>
        Math.Abs(Conductor.Awg(Conductor.AreaSquareMillimetres(awg)) - awg) < 1e-9);

    [Fact]
    public void The_cross_section_is_the_circle_of_the_diameter() => Gauges.Sample(awg =>
        Math.Abs(Conductor.AreaSquareMillimetres(awg) / Math.Pow(Conductor.DiameterMillimetres(awg) / 2, 2) - Math.PI) < 1e-12);

    [Fact]
    public void A_higher_gauge_is_thinner() => Gauges.Sample(awg => Conductor.DiameterMillimetres(awg + 0.1) < Conductor.DiameterMillimetres(awg));

    [Fact]
    public void A_temperature_comes_back_from_its_factor() => Gen.Double[-40, 100].Sample(celsius =>
        Math.Abs(Conductor.CelsiusForFactor(Conductor.Factor(celsius)) - celsius) < 1e-9);

    [Fact]
    public void A_hotter_wire_never_resists_less() => Gen.Select(Gen.Double[0.05, 1], Gen.Double[-40, 100]).Sample((area, celsius) =>
        Conductor.OhmsPerMetre(area, celsius + 1) > Conductor.OhmsPerMetre(area, celsius));

    [Fact]
    public void Half_the_conductivity_is_half_the_cross_section() => Gen.Select(Gen.Double[0.05, 1], Gen.Double[-40, 100]).Sample((area, celsius) =>
        Math.Abs(Conductor.OhmsPerMetre(area, celsius, 0.5) / Conductor.OhmsPerMetre(area / 2, celsius) - 1) < 1e-12);

    [Fact]
    public void A_square_millimetre_of_58_m_is_one_ohm() => Assert.Equal(1, 58 * Conductor.OhmsPerMetre(1, 20), 1e-12);

    [Theory]
    [InlineData(0)]
    [InlineData(-1)]
    [InlineData(double.NaN)]
    public void A_cross_section_is_above_0(double area) =>
        Assert.Throws<ArgumentOutOfRangeException>("squareMillimetres", () => Conductor.OhmsPerMetre(area, 20));
}

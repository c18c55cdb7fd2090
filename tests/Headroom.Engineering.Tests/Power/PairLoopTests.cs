using Headroom.Engineering.Power;

namespace Headroom.Engineering.Tests.Power;

public sealed class PairLoopTests
{
    private static readonly Gen<(double OhmsPerMetre, double Metres)> Cables = Gen.Select(Gen.Double[0.01, 0.3], Gen.Double[0, 150]);

    [Fact]
    public void Four_pairs_halve_the_loop_of_two() => Cables.Sample((ohms, metres) =>
        PairLoop.PowerLoopOhms(ohms, metres, 4) == PairLoop.PowerLoopOhms(ohms, metres, 2) / 2);

    [Fact]
    public void A_tester_on_one_pair_shows_twice_the_loop_of_two() => Cables.Sample((ohms, metres) =>
        PairLoop.PairLoopOhms(ohms, metres) == 2 * PairLoop.PowerLoopOhms(ohms, metres, 2));

    // Reference, head of power-and-cabling: 9.38 Ω/100 m conductor, 100 m.
    [Theory]
    [InlineData(2, 9.38)]
    [InlineData(4, 4.69)]
    public void The_loop_of_100_m_is_as_printed(int pairs, double ohms) => Assert.Equal(ohms, PairLoop.PowerLoopOhms(0.0938, 100, pairs), 0.005);

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(3)]
    public void Power_runs_on_two_pairs_or_four(int pairs) =>
        Assert.Throws<ArgumentOutOfRangeException>(nameof(pairs), () => PairLoop.PowerLoopOhms(0.0938, 100, pairs));
}

using Headroom.Engineering.Power;

namespace Headroom.Engineering.Tests.Power;

public sealed class ConstantPowerLoadTests
{
    // The load is drawn as a share of the most the loop can carry, V²/4R: every sample has an answer.
    private static readonly Gen<(double Volts, double Ohms, double Watts)> Loops =
        Gen.Select(Gen.Double[10, 60], Gen.Double[0.1, 40], Gen.Double[0, 0.999])
            .Select((volts, ohms, share) => (volts, ohms, share * volts * volts / (4 * ohms)));

    // Least voltages of the stable branch, well above half the source's.
    private static readonly Gen<(double Volts, double Ohms, double LeastVolts)> Limits =
        Gen.Select(Gen.Double[10, 60], Gen.Double[0.1, 40], Gen.Double[0.6, 0.99])
            .Select((volts, ohms, share) => (volts, ohms, share * volts));

    [Fact]
    public void The_source_delivers_load_and_loss() => Loops.Sample((volts, ohms, watts) =>
        ConstantPowerLoad.Solve(volts, ohms, watts) is { } point && Near(point.SourceWatts, watts + point.LostWatts));

    [Fact]
    public void The_load_gets_what_it_asks_for() => Loops.Sample((volts, ohms, watts) =>
        ConstantPowerLoad.Solve(volts, ohms, watts) is { } point && Near(point.LoadWatts, watts));

    [Fact]
    public void The_loop_drops_what_the_load_lacks() => Loops.Sample((volts, ohms, watts) =>
        ConstantPowerLoad.Solve(volts, ohms, watts) is { } point && Near(volts - point.LoadVolts, point.Amperes * ohms, scale: volts));

    [Fact]
    public void A_load_settles_at_half_the_voltage_or_more() => Loops.Sample((volts, ohms, watts) =>
        ConstantPowerLoad.Solve(volts, ohms, watts)!.Value.LoadVolts >= volts / 2);

    [Fact]
    public void A_longer_run_never_asks_less_of_the_port() => Loops.Sample((volts, ohms, watts) =>
        ConstantPowerLoad.Solve(volts, ohms / 2, watts)!.Value.SourceWatts <= ConstantPowerLoad.Solve(volts, ohms, watts)!.Value.SourceWatts + 1e-9);

    [Fact]
    public void A_larger_load_never_leaves_more_voltage() => Loops.Sample((volts, ohms, watts) =>
        ConstantPowerLoad.Solve(volts, ohms, watts / 2)!.Value.LoadVolts >= ConstantPowerLoad.Solve(volts, ohms, watts)!.Value.LoadVolts);

    [Fact]
    public void Nothing_settles_above_the_most_that_the_loop_carries() => Loops.Sample((volts, ohms, _) =>
        ConstantPowerLoad.Solve(volts, ohms, ConstantPowerLoad.MostWatts(volts, ohms) * 1.000001) is null);

    [Fact]
    public void Seen_from_the_source_the_point_is_the_same() => Loops.Sample((volts, ohms, watts) =>
    {
        var point = ConstantPowerLoad.Solve(volts, ohms, watts)!.Value;
        return ConstantPowerLoad.FromSource(volts, ohms, point.SourceWatts) is { } back
            && Near(back.LoadVolts, point.LoadVolts) && Near(back.LoadWatts, watts) && Near(back.Amperes, point.Amperes);
    });

    [Fact]
    public void The_most_load_that_keeps_a_voltage_leaves_just_that_voltage() => Limits.Sample((volts, ohms, least) =>
        ConstantPowerLoad.Solve(volts, ohms, ConstantPowerLoad.MostWattsKeeping(volts, ohms, least)!.Value) is { } point && Near(point.LoadVolts, least));

    [Fact]
    public void The_longest_loop_for_that_load_is_the_loop_itself() => Limits.Sample((volts, ohms, least) =>
        Near(ConstantPowerLoad.MostOhmsKeeping(volts, least, ConstantPowerLoad.MostWattsKeeping(volts, ohms, least)!.Value)!.Value, ohms));

    [Fact]
    public void Below_half_the_voltage_the_loop_itself_is_the_limit() => Limits.Sample((volts, ohms, least) =>
        Near(ConstantPowerLoad.MostWattsKeeping(volts, ohms, least - volts / 2)!.Value, ConstantPowerLoad.MostWatts(volts, ohms))
        && Near(ConstantPowerLoad.MostOhmsKeeping(volts, least - volts / 2, 10)!.Value, volts * volts / 40));

    [Fact]
    public void Without_a_loop_nothing_is_lost() =>
        Assert.Equal(new OperatingPoint(LoadVolts: 50, Amperes: 0.5, LostWatts: 0, SourceWatts: 25), ConstantPowerLoad.Solve(50, 0, 25));

    [Fact]
    public void Without_a_loop_there_is_no_most() => Assert.Multiple(
        () => Assert.Equal(double.PositiveInfinity, ConstantPowerLoad.MostWatts(50, 0)),
        () => Assert.Equal(double.PositiveInfinity, ConstantPowerLoad.MostWattsKeeping(50, 0, 50)),
        () => Assert.Equal(double.PositiveInfinity, ConstantPowerLoad.MostOhmsKeeping(50, 42.5, 0)));

    [Fact]
    public void A_source_below_the_least_voltage_keeps_nothing() => Assert.Multiple(
        () => Assert.Null(ConstantPowerLoad.MostWattsKeeping(24, 0, 42)),
        () => Assert.Null(ConstantPowerLoad.MostOhmsKeeping(24, 42, 0)));

    // (V - √(V² - 4RP)) / 2R gives 0.2044 here, two per cent off: the roots differ by less than the last bits of V.
    [Fact]
    public void A_very_short_loop_loses_no_digits() =>
        Assert.Equal(0.2, ConstantPowerLoad.Solve(sourceVolts: 50, loopOhms: 1e-12, loadWatts: 10)!.Value.Amperes, 1e-15);

    [Fact]
    public void A_port_reading_that_leaves_less_than_half_is_no_load() => Assert.Null(ConstantPowerLoad.FromSource(50, 12.5, 100.1));

    [Theory]
    [InlineData(0, 1, 1, "sourceVolts")]
    [InlineData(double.NaN, 1, 1, "sourceVolts")]
    [InlineData(50, -1, 1, "loopOhms")]
    [InlineData(50, double.PositiveInfinity, 1, "loopOhms")]
    [InlineData(50, 1, -1, "loadWatts")]
    [InlineData(50, 1, double.NaN, "loadWatts")]
    public void A_wrong_figure_is_refused_by_name(double volts, double ohms, double watts, string name) =>
        Assert.Equal(name, Assert.Throws<ArgumentOutOfRangeException>(() => ConstantPowerLoad.Solve(volts, ohms, watts)).ParamName);

    [Fact]
    public void A_refusal_says_what_was_given_and_what_is_allowed() => Assert.StartsWith(
        "loopOhms is -1.5 Ω; it must be finite and 0 or more.",
        Assert.Throws<ArgumentOutOfRangeException>(() => ConstantPowerLoad.Solve(50, -1.5, 1)).Message, StringComparison.Ordinal);

    private static bool Near(double one, double other, double scale = 0) =>
        Math.Abs(one - other) <= 1e-9 * Math.Max(scale, Math.Max(Math.Abs(one), Math.Abs(other)));
}

using Headroom.Engineering.Power;

namespace Headroom.Engineering.Tests.Power;

public sealed class StartUpTests
{
    private static readonly Gen<PoeType> Types = Gen.Enum<PoeType>();

    [Fact]
    public void The_largest_capacitor_charges_in_just_the_time() => Gen.Select(Gen.Double[0.001, 1], Gen.Double[10, 60], Gen.Double[0.01, 2]).Sample((seconds, volts, amperes) =>
        Math.Abs(StartUp.ChargeSeconds(StartUp.MostFarads(seconds, volts, amperes), volts, amperes) - seconds) < 1e-12);

    [Fact]
    public void A_device_that_needs_no_limit_of_its_own_is_charged_before_the_source_gives_up() =>
        Assert.True(StartUp.ChargeSeconds(StartUp.DeviceFreeFarads, PoeTypes.Of(PoeType.Type1).SourceVoltsMax, StartUp.InrushAmperes(3).Least) < StartUp.InrushSecondsMin);

    [Fact]
    public void Every_signature_that_a_device_may_show_is_accepted() => Gen.Double[Detection.DeviceOhmsMin, Detection.DeviceOhmsMax].Sample(ohms =>
        Detection.IsValidSignature(ohms) && Detection.AnswerToOhms(ohms) == SourceAnswer.Accepts);

    [Fact]
    public void Every_current_of_a_class_is_read_as_that_class_and_no_other() => Gen.Select(Gen.Int[0, 4], Gen.Double[0, 1]).Sample((cls, share) =>
    {
        var row = Classification.Currents[cls];
        return Classification.MayRead(row.DeviceAmperesMin + share * (row.DeviceAmperesMax - row.DeviceAmperesMin)) is [var read] && read == cls;
    });

    [Fact]
    public void A_current_above_the_highest_class_is_no_class() => Assert.Empty(Classification.MayRead(0.0451));

    // Devices to the older rule are of class 4 at most; the higher amplitude comes with classes 5 to 8.
    [Fact]
    public void A_device_that_keeps_to_its_rule_keeps_its_port() => Gen.Select(Types, Types, Gen.Int[0, 8])
        .Where((_, device, cls) => device >= PoeType.Type3 || cls <= 4)
        .Sample((pse, device, cls) => KeepAlive.Holds(KeepAlive.Pulse(pse, device, cls), pse, cls) == SourceAnswer.Accepts);

    [Theory]
    [InlineData(0.004, 0.075, 0.250, SourceAnswer.Rejects)]
    [InlineData(0.010, 0.075, 0.401, SourceAnswer.Rejects)]
    [InlineData(0.010, 0.075, 0.350, SourceAnswer.Either)]
    [InlineData(0.010, 0.059, 0.250, SourceAnswer.Either)]
    [InlineData(0.007, 0.075, 0.250, SourceAnswer.Either)]
    [InlineData(0.010, 0.060, 0.299, SourceAnswer.Accepts)]
    public void A_source_judges_height_length_and_gap(double amperes, double on, double off, SourceAnswer answer) =>
        Assert.Equal(answer, KeepAlive.Holds(new KeepAlivePulse(amperes, on, off), PoeType.Type2, 4));

    [Fact]
    public void The_drop_threshold_of_newer_sources_is_not_known() => Assert.Equal(SourceAnswer.Either, KeepAlive.Holds(0.001, PoeType.Type4, 8));

    [Fact]
    public void A_short_circuit_figure_that_is_not_known_is_null() => Assert.Multiple(
        () => Assert.Null(Overload.ShortCircuitAmperesMin(PoeType.Type3)),
        () => Assert.Equal((null, null), Overload.ShortCircuitSeconds(PoeType.Type3, 6)));

    [Theory]
    [InlineData(41.9, false)]
    [InlineData(42, true)]
    public void A_load_starts_from_its_turn_on_voltage(double volts, bool starts) => Assert.Equal(starts, PassivePins.StartsOn(volts, PassivePins.TurnOnVolts));
}

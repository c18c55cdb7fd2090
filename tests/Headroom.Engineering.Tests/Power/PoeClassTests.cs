using Headroom.Engineering.Power;

namespace Headroom.Engineering.Tests.Power;

public sealed class PoeClassTests
{
    private static readonly Gen<int> Classes = Gen.Int[0, 8];

    private static readonly Gen<PoeType> Types = Gen.Enum<PoeType>();

    [Fact]
    public void A_port_never_grants_more_than_it_has_or_than_is_asked() => Gen.Select(Classes, Classes).Sample((highest, asked) =>
        ClassAssignment.Granted(highest, asked) is not { } granted
        || (!ClassAssignment.IsDemoted(highest, granted) && !ClassAssignment.IsDemoted(asked, granted)));

    [Fact]
    public void More_class_events_never_grant_less() => Gen.Select(Gen.Int[1, 4], Classes).Sample((events, asked) =>
        !ClassAssignment.IsDemoted(ClassAssignment.GrantedByEvents(events + 1, asked), ClassAssignment.GrantedByEvents(events, asked)));

    [Theory]
    [InlineData(5, 6, 4)]
    [InlineData(7, 8, 6)]
    [InlineData(2, 1, 1)]
    [InlineData(0, 4, 3)]
    public void A_port_stops_early_before_a_class_it_has_no_power_for(int highest, int asked, int granted) =>
        Assert.Equal(granted, ClassAssignment.Granted(highest, asked));

    [Theory]
    [InlineData(2, 3)]
    [InlineData(2, 0)]
    [InlineData(1, 2)]
    public void A_port_too_weak_for_one_event_stays_off(int highest, int asked) => Assert.Null(ClassAssignment.Granted(highest, asked));

    [Fact]
    public void Class_0_counts_as_class_3() => Assert.Multiple(
        () => Assert.False(ClassAssignment.IsDemoted(3, 0)),
        () => Assert.False(ClassAssignment.IsDemoted(0, 3)),
        () => Assert.True(ClassAssignment.IsDemoted(2, 0)),
        () => Assert.Equal(PoeClasses.SourceWatts(3), PoeClasses.SourceWatts(0)));

    [Fact]
    public void A_class_and_its_channel_leave_the_device_its_power() => Classes.Sample(cls =>
    {
        var row = PoeClasses.Of(cls);
        var point = ConstantPowerLoad.FromSource(row.SourceVoltsMin, row.ChannelOhms, row.SourceWatts)!.Value;
        // The standard rounds: device powers by up to 0.07 W, device voltages downwards by less than 0.1 V.
        return Math.Abs(point.LoadWatts - row.DeviceWatts) <= 0.07 && point.LoadVolts - row.DeviceVoltsMin is > -0.001 and < 0.1;
    });

    [Fact]
    public void A_reservation_lies_between_the_device_and_the_class() => Gen.Select(Classes, Types, Gen.Double[0, 1]).Sample((cls, pse, share) =>
    {
        var device = share * PoeClasses.DeviceWatts(cls);
        return Reservation.ForClass(device, cls, pse) is { } watts && watts >= device - 1e-12 && watts <= PoeClasses.SourceWatts(cls, pse);
    });

    [Fact]
    public void A_larger_allocation_never_reserves_less() => Gen.Select(Classes, Types, Gen.Double[0, 1]).Sample((cls, pse, share) =>
        Reservation.ForClass(share * PoeClasses.DeviceWatts(cls), cls, pse) <= Reservation.ForClass(PoeClasses.DeviceWatts(cls), cls, pse));

    [Fact]
    public void An_allocation_beyond_the_loop_has_no_reservation() => Assert.Null(Reservation.ForClass(60, 4, PoeType.Type2));

    [Fact]
    public void A_measured_reservation_never_exceeds_the_class() => Gen.Select(Classes, Types, Gen.Double[0, 120], Gen.Double[0, 5]).Sample((cls, pse, watts, margin) =>
        Autoclass.ReserveWatts(watts, margin, cls, pse) <= PoeClasses.SourceWatts(cls, pse));

    [Theory]
    [InlineData(-1)]
    [InlineData(9)]
    public void There_is_no_class_outside_0_to_8(int cls) => Assert.Throws<ArgumentOutOfRangeException>(nameof(cls), () => PoeClasses.DeviceWatts(cls));
}

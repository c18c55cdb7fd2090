using Headroom.Engineering.Power;

namespace Headroom.Engineering.Tests.Power;

public sealed class PowerTlvTests
{
    private static readonly Gen<int> Tenths = Gen.Int[0, 65535];

    private static readonly Gen<PowerPriority> Priorities = Gen.Int[0, 3].Select(code => (PowerPriority)code);

    private static readonly Gen<(bool IsSource, PowerOrigin Origin)> Origins = Gen.OneOf(
        (true, PowerOrigin.Unknown), (true, PowerOrigin.Primary), (true, PowerOrigin.Backup),
        (false, PowerOrigin.Unknown), (false, PowerOrigin.Cable), (false, PowerOrigin.Local), (false, PowerOrigin.CableAndLocal));

    private static readonly Gen<FourPairPower?> FourPairs = Gen.Select(
        Gen.Select(Tenths, Tenths, Tenths, Tenths, (a, b, c, d) => new DualPower(a, b, c, d)),
        Gen.Int[0, 3].Array[3], Gen.Int[0, 7].Array[3], Gen.Int[0, 15], Gen.Bool, Tenths, Gen.Int[0, 255], Gen.Int[0, 0xffffff],
        (dual, twos, threes, cls, isolated, ceiling, autoclass, down) => (FourPairPower?)new FourPairPower(
            dual, twos[0], twos[1], twos[2], threes[0], threes[1], cls, threes[2], isolated, ceiling, autoclass, down));

    private static readonly Gen<PowerAllocation?> Allocations = Gen.Select(
        Origins, Gen.Bool, Priorities, Tenths, Tenths, Gen.OneOf(Gen.Const((FourPairPower?)null), FourPairs),
        (origin, type1, priority, asked, given, fourPair) =>
            (PowerAllocation?)new PowerAllocation(origin.IsSource, type1, origin.Origin, priority, asked, given, fourPair));

    private static readonly Gen<PowerTlvBody> Bodies = Gen.OneOf<PowerTlvBody>(
        Gen.Select(Gen.Int[0, 15], Gen.Byte, Gen.Byte, Gen.OneOf(Gen.Const((PowerAllocation?)null), Allocations),
            (support, pairs, cls, allocation) => (PowerTlvBody)new PowerViaMdi((MdiSupport)support, pairs, cls, allocation)),
        Gen.Select(Origins, Priorities, Gen.Int[0, 1023],
            (origin, priority, tenths) => (PowerTlvBody)new MedPower(origin.IsSource, origin.Origin, priority, tenths)),
        Gen.Select(Gen.UShort, Gen.Byte, (bits, cls) => (PowerTlvBody)new MedCapabilities((MedCapability)bits, cls)));

    // Headers and subtypes that the reader knows, before octets by chance: else nearly every sample is refused at once.
    private static readonly Gen<byte[]> NearlyRight = Gen.Select(
        Gen.OneOf("00120f02", "0012bb01", "0012bb04"), Gen.OneOf(Gen.OneOf(3, 8, 25), Gen.Int[0, 40]).SelectMany(length => Gen.Byte.Array[length]),
        (kind, body) => (byte[])[0xfe, (byte)(body.Length + 4), .. Convert.FromHexString(kind), .. body]);

    [Fact]
    public void What_is_written_reads_back_the_same() => Bodies.Sample(body => PowerTlv.Decode(PowerTlv.Encode(body)) == new TlvReading(body, null));

    [Fact]
    public void Octets_by_chance_give_a_finding_or_a_body_and_never_throw() =>
        Gen.OneOf(Gen.Byte.Array[0, 40], NearlyRight).Sample(octets => PowerTlv.Decode(octets) is { Body: null } ^ PowerTlv.Decode(octets) is { Finding: null }, iter: 10_000);

    [Fact]
    public void Whatever_can_be_read_can_be_written_and_says_the_same() => NearlyRight.Sample(octets =>
        PowerTlv.Decode(octets).Body is not { } body || PowerTlv.Decode(PowerTlv.Encode(body)).Body == body, iter: 10_000);

    [Fact]
    public void A_good_share_of_those_octets_can_be_read() =>
        Assert.InRange(NearlyRight.Array[1000].Single().Count(octets => PowerTlv.Decode(octets).Body is not null), 100, 900);

    [Fact]
    public void An_element_cut_short_or_run_on_is_a_finding() => Bodies.Sample(body =>
    {
        var octets = PowerTlv.Encode(body);
        return PowerTlv.Decode(octets.AsSpan(0, octets.Length - 1)).Body is null && PowerTlv.Decode([.. octets, 0]).Body is null;
    });

    [Theory]
    [InlineData("", "0 octets")]
    [InlineData("0807000000000000", "type 4")]
    [InlineData("fe0800120f02000104", "header says 8 octets and 7 follow")]
    [InlineData("fe0800120f0200010400", "7, 12 or 29 octets")]
    [InlineData("fe070012bb04530400", "1024 tenths")]
    [InlineData("fe070012bb04930041", "power type is 2")]
    [InlineData("fe070080c201000001", "0080c201")]
    public void A_finding_says_what_is_wrong(string hex, string says) =>
        Assert.Contains(says, PowerTlv.Decode(Convert.FromHexString(hex)).Finding, StringComparison.Ordinal);

    [Fact]
    public void A_field_out_of_range_is_not_written() => Assert.Multiple(
        () => Assert.Throws<ArgumentOutOfRangeException>(() => PowerTlv.Encode(new MedPower(true, PowerOrigin.Primary, PowerPriority.Low, 1024))),
        () => Assert.Throws<ArgumentOutOfRangeException>(() => PowerTlv.Encode(new MedPower(true, PowerOrigin.Local, PowerPriority.Low, 65))),
        () => Assert.Throws<ArgumentOutOfRangeException>(() => PowerTlv.Encode(new PowerViaMdi(MdiSupport.None, 256, 1, null))));

    [Fact]
    public void A_class_that_the_wire_does_not_tell_is_unknown() => Assert.Multiple(
        () => Assert.Null(new PowerViaMdi(MdiSupport.None, 1, 0, null).Class),
        () => Assert.Null(new PowerViaMdi(MdiSupport.None, 1, 6, null).Class));
}

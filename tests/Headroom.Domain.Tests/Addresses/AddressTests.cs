using Headroom.Domain.Addresses;

namespace Headroom.Domain.Tests.Addresses;

/// <summary>Addresses are read as written or refused; nothing is guessed.</summary>
public sealed class AddressTests
{
    [Theory]
    [InlineData("10.0.0.1/24")]
    [InlineData("10.0.0.0/33")]
    [InlineData("256.1.1.1/32")]
    [InlineData("10.1.1/24")]
    [InlineData("010.1.1.1/32")]
    [InlineData("0x0a.1.1.1/32")]
    [InlineData("192.168.010.1/32")]
    [InlineData("1/8")]
    [InlineData("10.1.1.0")]
    [InlineData("10.1.1.0/")]
    [InlineData("10.1.1.0/08")]
    [InlineData("10.1.1.0/ 24")]
    [InlineData("10.1.1.+1/32")]
    [InlineData("١.1.1.1/32")]
    public void What_programs_disagree_about_is_no_range(string text)
    {
        Assert.Null(Ip4Range.Read(text, out var advice));
        Assert.NotNull(advice);
    }

    [Fact]
    public void Bits_behind_the_prefix_are_told_with_the_range_that_was_meant()
    {
        Ip4Range.Read("10.0.0.1/24", out var advice);
        Assert.Contains("'10.0.0.0/24'", advice, StringComparison.Ordinal);
        Ip6Range.Read("fd4c::1/64", out advice);
        Assert.Contains("'fd4c::/64'", advice, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("fd4c::/129")]
    [InlineData("fd4c::%3/64")]
    [InlineData("[fd4c::]/64")]
    [InlineData("10.0.0.0/24")]
    [InlineData("fd4c:::1/64")]
    public void What_is_no_range_of_version_6_is_refused(string text) => Assert.Null(Ip6Range.Read(text, out _));

    private static readonly Gen<Ip4Range> Ranges = Gen.Select(Gen.UInt, Gen.Int[0, 32]).Select((value, prefix) => new Ip4Range(new Ip4(prefix == 0 ? 0 : value >> 32 - prefix << 32 - prefix), prefix));

    [Fact]
    public void A_range_is_read_as_it_is_written() => Ranges.Sample(range => Assert.Equal(range, Ip4Range.Read(range.ToString(), out _)));

    [Fact]
    public void Two_ranges_meet_exactly_when_one_lies_in_the_other() => Gen.Select(Ranges, Ranges).Sample((one, other) =>
        Assert.Equal(one.Contains(other) || other.Contains(one), one.Overlaps(other)));

    [Fact]
    public void A_hardware_address_is_read_in_each_form_it_is_written_in() => Gen.ULong[0, 0xFFFF_FFFF_FFFF].Sample(value =>
    {
        var address = new HardwareAddress(value);
        var text = address.ToString();
        foreach (var form in new[] { text, text.Replace('-', ':').ToLowerInvariant(), text.Replace("-", "", StringComparison.Ordinal) })
            Assert.Equal(address, HardwareAddress.Read(form));
    });

    [Theory]
    [InlineData("34-56:78-9A-BC-DE")]
    [InlineData("34-56-78-9A-BC")]
    [InlineData("34-56-78-9A-BC-DG")]
    [InlineData("3456-789A-BCDE")]
    [InlineData("")]
    public void A_hardware_address_of_mixed_signs_or_other_length_is_none(string text) => Assert.Null(HardwareAddress.Read(text));
}

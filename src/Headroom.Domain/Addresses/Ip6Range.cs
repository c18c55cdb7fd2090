using System.Buffers.Binary;
using System.Globalization;
using System.Net;
using System.Net.Sockets;

namespace Headroom.Domain.Addresses;

/// <summary>A range of addresses of the internet protocol, version 6: <c>fd4c:12ab:77::/48</c>.</summary>
/// <param name="First">The first address; it has no bits behind the prefix.</param>
/// <param name="Prefix">How many bits all addresses of it share, 0 to 128.</param>
public readonly record struct Ip6Range(UInt128 First, int Prefix)
{
    /// <summary>Reads a range; bits behind the prefix are refused.</summary>
    /// <param name="text">The text, such as <c>fd4c:12ab:77::/48</c>.</param>
    /// <param name="advice">What to do when it is none; null otherwise.</param>
    /// <returns>The range; null when the text is none.</returns>
    public static Ip6Range? Read(string text, out string? advice)
    {
        var (address, bits) = Ip4Range.Halves(text);
        advice = "write groups of hexadecimal digits with colons and the prefix behind a stroke, like 'fd4c:12ab:77::/48'";
        if (Parse(address) is not { } first || Ip4Range.PrefixOf(bits, 128) is not { } prefix)
            return null;
        var start = first & MaskOf(prefix);
        advice = start == first ? null : string.Create(CultureInfo.InvariantCulture, $"there are bits behind the prefix: write '{Show(start)}/{prefix}' for the range, or correct the prefix");
        return advice is null ? new Ip6Range(first, prefix) : null;
    }

    /// <summary>One of the ranges it can be divided into.</summary>
    /// <param name="index">Which, from 0.</param>
    /// <param name="prefix">The prefix of each; not below its own.</param>
    /// <returns>The range; null when it has not so many.</returns>
    public Ip6Range? Part(long index, int prefix) =>
        prefix >= Prefix && prefix <= 128 && index >= 0 && (prefix - Prefix >= 63 || index < 1L << prefix - Prefix)
            ? new Ip6Range(First + ((UInt128)(ulong)index << 128 - prefix), prefix)
            : null;

    /// <summary>How many ranges of a prefix it can be divided into.</summary>
    /// <param name="prefix">The prefix of each.</param>
    /// <returns>How many; 0 when the prefix is below its own.</returns>
    public double Parts(int prefix) => prefix < Prefix ? 0 : Math.Pow(2, prefix - Prefix);

    /// <summary>An address as it is written (RFC 5952).</summary>
    /// <param name="address">The address.</param>
    /// <returns>The text.</returns>
    public static string Show(UInt128 address)
    {
        Span<byte> octets = stackalloc byte[16];
        BinaryPrimitives.WriteUInt128BigEndian(octets, address);
        return new IPAddress(octets).ToString();
    }

    /// <inheritdoc/>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Show(First)}/{Prefix}");

    // A zone, a port or brackets are no part of a range; the library would take them.
    private static UInt128? Parse(string text) =>
        text.Contains(':', StringComparison.Ordinal) && text.All(c => char.IsAsciiHexDigit(c) || c is ':' or '.')
        && IPAddress.TryParse(text, out var found) && found.AddressFamily == AddressFamily.InterNetworkV6
            ? BinaryPrimitives.ReadUInt128BigEndian(found.GetAddressBytes())
            : null;

    private static UInt128 MaskOf(int prefix) => prefix == 0 ? 0 : UInt128.MaxValue << 128 - prefix;
}

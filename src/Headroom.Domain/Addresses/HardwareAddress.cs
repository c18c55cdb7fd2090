using System.Globalization;

namespace Headroom.Domain.Addresses;

/// <summary>The address that a network port has from its maker (IEEE 802, 48 bits).</summary>
/// <param name="Value">Its 48 bits, the first octet highest.</param>
public readonly record struct HardwareAddress(ulong Value)
{
    private const int Digits = 12;
    private const ulong LocalBit = 0x0200_0000_0000;
    private const ulong GroupBit = 0x0100_0000_0000;

    /// <summary>True when it stands for a group of ports, so that no device has it.</summary>
    public bool IsGroup => (Value & GroupBit) != 0;

    /// <summary>True when it was made up by the device or its owner and not given by a maker; phones make one up for each network.</summary>
    public bool IsLocal => (Value & LocalBit) != 0;

    /// <summary>The identifier that an interface makes of it for version 6: FF-FE in the middle, the bit for "local" turned. Source: RFC 4291, Appendix A; RFC 2464, section 4.</summary>
    public ulong InterfaceId => (Value >> 24 << 40 | 0xFFFEUL << 24 | Value & 0xFF_FFFF) ^ 0x0200_0000_0000_0000;

    /// <summary>The link-local address that it makes of it. Source: RFC 4291, section 2.5.6.</summary>
    public UInt128 LinkLocal => new(0xFE80_0000_0000_0000, InterfaceId);

    /// <summary>The group that its neighbours are asked on. Source: RFC 4291, section 2.7.1.</summary>
    public UInt128 SolicitedNode => new(0xFF02_0000_0000_0000, 0x0000_0001_FF00_0000 | InterfaceId & 0xFF_FFFF);

    /// <summary>Reads an address in the forms people write: six pairs with colons or with hyphens, three groups with points, or none of these.</summary>
    /// <param name="text">The text.</param>
    /// <returns>The address; null when the text is none, also when it mixes signs.</returns>
    public static HardwareAddress? Read(string text)
    {
        var written = text.Trim();
        var signs = written.Where(c => !char.IsAsciiHexDigit(c)).Distinct().ToArray();
        if (signs.Length > 1 || (signs.Length == 1 && signs[0] is not (':' or '-' or '.')))
            return null;
        var groups = signs.Length == 0 ? [written] : written.Split(signs[0]);
        var expected = signs.Length == 0 ? 1 : signs[0] == '.' ? 3 : 6;
        return groups.Length == expected && groups.All(group => group.Length == Digits / expected)
            ? new HardwareAddress(ulong.Parse(string.Concat(groups), NumberStyles.AllowHexSpecifier, CultureInfo.InvariantCulture))
            : null;
    }

    /// <summary>The hardware address to which a group address of version 4 is sent. Source: RFC 1112, section 6.4, from memory.</summary>
    /// <param name="group">The group address.</param>
    /// <returns>The hardware address.</returns>
    public static HardwareAddress OfGroup(Ip4 group) => new(0x0100_5E00_0000UL | group.Value & 0x7F_FFFFU);

    /// <inheritdoc/>
    public override string ToString()
    {
        var value = Value;
        return string.Join('-', Enumerable.Range(0, 6).Select(octet => (value >> 40 - 8 * octet & 255).ToString("X2", CultureInfo.InvariantCulture)));
    }
}

using System.Buffers.Binary;

namespace Headroom.Engineering.Power;

/// <summary>Reads and writes the LLDP elements by which a device and its port agree on power.</summary>
/// <remarks>
/// Source: IEEE 802.1AB, clause 8 (header), IEEE 802.3, 79.3.2, and TIA-1057, 10.2; the layout was seen in public source code.
/// </remarks>
public static class PowerTlv
{
    private const int HeaderOctets = 2;
    private const int OrganisationOctets = 4;
    private const int OrganisationSpecific = 127;
    private const uint MdiPower = 0x00120f_02;
    private const uint MedCapabilitiesKind = 0x0012bb_01;
    private const uint MedPowerKind = 0x0012bb_04;

    /// <summary>Reads one element, header included.</summary>
    /// <param name="octets">The element and nothing else.</param>
    /// <returns>A body, or a finding. Wrong octets are never an exception.</returns>
    public static TlvReading Decode(ReadOnlySpan<byte> octets)
    {
        if (octets.Length < HeaderOctets + OrganisationOctets)
            return Refused($"it has {octets.Length} octets; the shortest element of an organisation has {HeaderOctets + OrganisationOctets}");
        var header = BinaryPrimitives.ReadUInt16BigEndian(octets);
        var (type, length) = (header >> 9, header & 0x1ff);
        if (type != OrganisationSpecific)
            return Refused($"it is of type {type}; elements of an organisation are of type {OrganisationSpecific}");
        if (length != octets.Length - HeaderOctets)
            return Refused($"its header says {length} octets and {octets.Length - HeaderOctets} follow");
        var body = octets[(HeaderOctets + OrganisationOctets)..];
        return BinaryPrimitives.ReadUInt32BigEndian(octets[HeaderOctets..]) switch
        {
            MdiPower => MdiPowerOctets.Read(body),
            MedPowerKind => MedOctets.ReadPower(body),
            MedCapabilitiesKind => MedOctets.ReadCapabilities(body),
            var kind => Refused($"its organisation and subtype are {kind:x8}; known are {MdiPower:x8}, {MedPowerKind:x8} and {MedCapabilitiesKind:x8}"),
        };
    }

    /// <summary>Writes one element, header included.</summary>
    /// <param name="body">What it is to say; every field within its range.</param>
    public static byte[] Encode(PowerTlvBody body) => body switch
    {
        PowerViaMdi mdi => Framed(MdiPower, MdiPowerOctets.Write(mdi)),
        MedPower power => Framed(MedPowerKind, MedOctets.Write(power)),
        MedCapabilities capabilities => Framed(MedCapabilitiesKind, MedOctets.Write(capabilities)),
        _ => throw new ArgumentException($"{body.GetType().Name} is no element of power over LLDP.", nameof(body)),
    };

    internal static TlvReading Refused(FormattableString why) =>
        new(null, "The LLDP element cannot be read: " + FormattableString.Invariant(why) + ".");

    private static byte[] Framed(uint kind, byte[] body)
    {
        var octets = new byte[HeaderOctets + OrganisationOctets + body.Length];
        BinaryPrimitives.WriteUInt16BigEndian(octets, (ushort)(OrganisationSpecific << 9 | OrganisationOctets + body.Length));
        BinaryPrimitives.WriteUInt32BigEndian(octets.AsSpan(HeaderOctets), kind);
        body.CopyTo(octets, HeaderOctets + OrganisationOctets);
        return octets;
    }
}

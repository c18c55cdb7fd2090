using static System.Buffers.Binary.BinaryPrimitives;

namespace Headroom.Engineering.Power;

/// <summary>The LLDP-MED elements as octets, without header, organisation and subtype.</summary>
/// <remarks>Source: TIA-1057, 10.2.2 and 10.2.5, layout seen in public source code. Values that are reserved read as unknown.</remarks>
internal static class MedOctets
{
    private const int Octets = 3;

    internal static TlvReading ReadPower(ReadOnlySpan<byte> body)
    {
        if (body.Length != Octets)
            return PowerTlv.Refused($"its length is {body.Length + 4}; \"Extended Power via MDI\" has {Octets + 4} octets");
        var (type, tenths) = (body[0] >> 6, ReadUInt16BigEndian(body[1..]));
        if (type > 1)
            return PowerTlv.Refused($"its power type is {type}; it must be 0 (source) or 1 (device)");
        if (tenths > MedPower.MostTenths)
            return PowerTlv.Refused($"its power is {tenths} tenths of a watt; the most is {MedPower.MostTenths}");
        var priority = (body[0] & 15) <= 3 ? (PowerPriority)(body[0] & 15) : PowerPriority.Unknown;
        return new(new MedPower(type == 0, PowerOrigins.Read(type == 0, body[0] >> 4 & 3), priority, tenths), null);
    }

    internal static TlvReading ReadCapabilities(ReadOnlySpan<byte> body) => body.Length == Octets
        ? new(new MedCapabilities((MedCapability)ReadUInt16BigEndian(body), body[2]), null)
        : PowerTlv.Refused($"its length is {body.Length + 4}; \"Capabilities\" has {Octets + 4} octets");

    internal static byte[] Write(MedPower power)
    {
        Require.Between(0, 3, (int)power.Priority);
        Require.Between(0, MedPower.MostTenths, power.Tenths);
        var first = (power.IsSource ? 0 : 0x40) | PowerOrigins.Code(power.IsSource, power.Origin) << 4 | (int)power.Priority;
        return [(byte)first, (byte)(power.Tenths >> 8), (byte)power.Tenths];
    }

    internal static byte[] Write(MedCapabilities capabilities)
    {
        var bits = (int)capabilities.Capabilities;
        Require.Between(0, ushort.MaxValue, bits);
        Require.Between(0, 255, capabilities.DeviceClass);
        return [(byte)(bits >> 8), (byte)bits, (byte)capabilities.DeviceClass];
    }
}

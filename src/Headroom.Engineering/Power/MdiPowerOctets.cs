using static System.Buffers.Binary.BinaryPrimitives;

namespace Headroom.Engineering.Power;

/// <summary>"Power via MDI" as octets, without header, organisation and subtype.</summary>
/// <remarks>Source: IEEE 802.3, 79.3.2, layout seen in public source code. Reserved bits are ignored in reading and written as 0.</remarks>
internal static class MdiPowerOctets
{
    // The three forms are 7, 12 and 29 octets long with the 4 of organisation and subtype.
    private const int Short = 3;
    private const int Middle = 8;
    private const int Long = 25;

    internal static TlvReading Read(ReadOnlySpan<byte> body) => body.Length is Short or Middle or Long
        ? new(new PowerViaMdi((MdiSupport)(body[0] & 0xf), body[1], body[2], body.Length == Short ? null : Allocation(body)), null)
        : PowerTlv.Refused($"its length is {body.Length + 4}; \"Power via MDI\" has 7, 12 or 29 octets");

    internal static byte[] Write(PowerViaMdi mdi)
    {
        Require.Between(0, 15, (int)mdi.Support);
        Require.Between(0, 255, mdi.PairsCode);
        Require.Between(0, 255, mdi.ClassCode);
        var octets = new byte[mdi.Allocation is null ? Short : mdi.Allocation.FourPair is null ? Middle : Long];
        (octets[0], octets[1], octets[2]) = ((byte)mdi.Support, (byte)mdi.PairsCode, (byte)mdi.ClassCode);
        if (mdi.Allocation is { } allocation)
            Write(allocation, octets);
        if (mdi.Allocation?.FourPair is { } fourPair)
            Write(fourPair, octets);
        return octets;
    }

    private static PowerAllocation Allocation(ReadOnlySpan<byte> body)
    {
        var bits = body[3];
        // 00 type 2 source, 01 type 2 device, 10 type 1 source, 11 type 1 device.
        var isSource = (bits & 0x40) == 0;
        return new(
            isSource, IsType1: (bits & 0x80) != 0, PowerOrigins.Read(isSource, bits >> 4 & 3), (PowerPriority)(bits & 3),
            RequestedTenths: ReadUInt16BigEndian(body[4..]), AllocatedTenths: ReadUInt16BigEndian(body[6..]),
            body.Length == Long ? FourPair(body) : null);
    }

    private static FourPairPower FourPair(ReadOnlySpan<byte> body)
    {
        var status = ReadUInt16BigEndian(body[16..]);
        return new(
            new(ReadUInt16BigEndian(body[8..]), ReadUInt16BigEndian(body[10..]), ReadUInt16BigEndian(body[12..]), ReadUInt16BigEndian(body[14..])),
            SourceStatus: status >> 14, DeviceStatus: status >> 12 & 3, PairsExtension: status >> 10 & 3,
            ClassCodeA: status >> 7 & 7, ClassCodeB: status >> 4 & 7, ClassCode: status & 15,
            TypeCode: body[18] >> 1 & 7, LoadIsolated: (body[18] & 1) != 0, CeilingTenths: ReadUInt16BigEndian(body[19..]),
            AutoclassBits: body[21], PowerDownBits: body[22] << 16 | body[23] << 8 | body[24]);
    }

    private static void Write(PowerAllocation allocation, Span<byte> octets)
    {
        Require.Between(0, 3, (int)allocation.Priority);
        octets[3] = (byte)((allocation.IsType1 ? 0x80 : 0) | (allocation.IsSource ? 0 : 0x40)
            | PowerOrigins.Code(allocation.IsSource, allocation.Origin) << 4 | (int)allocation.Priority);
        WriteUInt16BigEndian(octets[4..], Tenths(allocation.RequestedTenths));
        WriteUInt16BigEndian(octets[6..], Tenths(allocation.AllocatedTenths));
    }

    private static void Write(FourPairPower power, Span<byte> octets)
    {
        Check(power);
        WriteUInt16BigEndian(octets[8..], Tenths(power.Dual.RequestedTenthsA));
        WriteUInt16BigEndian(octets[10..], Tenths(power.Dual.RequestedTenthsB));
        WriteUInt16BigEndian(octets[12..], Tenths(power.Dual.AllocatedTenthsA));
        WriteUInt16BigEndian(octets[14..], Tenths(power.Dual.AllocatedTenthsB));
        WriteUInt16BigEndian(octets[16..], (ushort)(power.SourceStatus << 14 | power.DeviceStatus << 12 | power.PairsExtension << 10
            | power.ClassCodeA << 7 | power.ClassCodeB << 4 | power.ClassCode));
        octets[18] = (byte)(power.TypeCode << 1 | (power.LoadIsolated ? 1 : 0));
        WriteUInt16BigEndian(octets[19..], Tenths(power.CeilingTenths));
        octets[21] = (byte)power.AutoclassBits;
        (octets[22], octets[23], octets[24]) = ((byte)(power.PowerDownBits >> 16), (byte)(power.PowerDownBits >> 8), (byte)power.PowerDownBits);
    }

    private static void Check(FourPairPower power)
    {
        Require.Between(0, 3, power.SourceStatus);
        Require.Between(0, 3, power.DeviceStatus);
        Require.Between(0, 3, power.PairsExtension);
        Require.Between(0, 7, power.ClassCodeA);
        Require.Between(0, 7, power.ClassCodeB);
        Require.Between(0, 15, power.ClassCode);
        Require.Between(0, 7, power.TypeCode);
        Require.Between(0, 255, power.AutoclassBits);
        Require.Between(0, 0xffffff, power.PowerDownBits);
    }

    private static ushort Tenths(int tenths)
    {
        Require.Between(0, ushort.MaxValue, tenths);
        return (ushort)tenths;
    }
}

namespace Headroom.Engineering.Power;

/// <summary>The fields that types 3 and 4 add to "Power via MDI" (29-octet form).</summary>
/// <param name="Dual">Asked and given for each pairset; zeros for a device with a single signature.</param>
/// <param name="SourceStatus">1 two pairs, 2 four pairs with a single signature, 3 four pairs with two.</param>
/// <param name="DeviceStatus">1 single signature, 2 two signatures on two pairs, 3 two signatures on four.</param>
/// <param name="PairsExtension">1 alternative A, 2 alternative B, 3 both.</param>
/// <param name="ClassCodeA">Class of alternative A, 1 to 5; 7 for none.</param>
/// <param name="ClassCodeB">Class of alternative B, 1 to 5; 7 for none.</param>
/// <param name="ClassCode">Class 1 to 8; 15 for two signatures.</param>
/// <param name="TypeCode">0 type 3 source, 1 type 4 source, 2 and 3 type 3 device (single, dual), 4 and 5 type 4 device (single, dual).</param>
/// <param name="LoadIsolated">Whether the two loads of a dual device are isolated from each other.</param>
/// <param name="CeilingTenths">Most that the source has for the port, at the device, in tenths of a watt, 0 to 65535.</param>
/// <param name="AutoclassBits">Autoclass octet as on the wire.</param>
/// <param name="PowerDownBits">Power-down field as on the wire, 24 bits.</param>
/// <remarks>Source: IEEE 802.3, 79.3.2, layout and order of values seen in public source code; type codes from memory.</remarks>
public sealed record FourPairPower(
    DualPower Dual, int SourceStatus, int DeviceStatus, int PairsExtension, int ClassCodeA, int ClassCodeB, int ClassCode,
    int TypeCode, bool LoadIsolated, int CeilingTenths, int AutoclassBits, int PowerDownBits)
{
    /// <summary>Class of a single signature, 1 to 8; null when there are two signatures or the value is reserved.</summary>
    public int? Class => ClassCode is >= 1 and <= 8 ? ClassCode : null;

    /// <summary>Whether the device has two signatures.</summary>
    public bool IsDual => ClassCode == 15;

    /// <summary>Type of the speaker; null for reserved values.</summary>
    public PoeType? Type => TypeCode switch
    {
        0 or 2 or 3 => PoeType.Type3,
        1 or 4 or 5 => PoeType.Type4,
        _ => null,
    };

    /// <summary>Whether the speaker is a source; null for reserved values.</summary>
    public bool? IsSource => TypeCode <= 5 ? TypeCode <= 1 : null;

    /// <summary>Most that the source has for the port, at the device [W].</summary>
    public double CeilingWatts => CeilingTenths / 10.0;
}

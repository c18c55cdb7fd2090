namespace Headroom.Engineering.Power;

/// <summary>The IEEE 802.3 element "Power via MDI".</summary>
/// <param name="Support">What the port says of its power.</param>
/// <param name="PairsCode">Pairs as on the wire, 0 to 255: 1 signal, 2 spare.</param>
/// <param name="ClassCode">Class as on the wire, 0 to 255: 1 to 5 for class 0 to 4.</param>
/// <param name="Allocation">What was asked and given; null in the 7-octet form.</param>
/// <remarks>Source: IEEE 802.3, 79.3.2, seen in public source code.</remarks>
public sealed record PowerViaMdi(MdiSupport Support, int PairsCode, int ClassCode, PowerAllocation? Allocation) : PowerTlvBody
{
    /// <summary>Class 0 to 4; null when the value on the wire is none of them.</summary>
    public int? Class => ClassCode is >= 1 and <= 5 ? ClassCode - 1 : null;

    /// <summary>Whether equipment of a type may ignore the element, being longer than the 12 octets it knows.</summary>
    /// <param name="type">Type of the equipment that receives it.</param>
    /// <remarks>Source: IEEE 802.3 maintenance draft, seen.</remarks>
    public bool MayBeIgnoredBy(PoeType type) => Allocation?.FourPair is not null && type <= PoeType.Type2;

    /// <summary>The same in the 12-octet form, to which equipment of type 3 or 4 may fall back.</summary>
    public PowerViaMdi Shortened() => this with { Allocation = Allocation is null ? null : Allocation with { FourPair = null } };
}

namespace Headroom.Engineering.Power;

/// <summary>Types of power over Ethernet, of a source or of a device. Source: IEEE 802.3, Tables 33-1 and 145-1, from memory.</summary>
public enum PoeType
{
    /// <summary>Two pairs, to 15.4 W at the source (classes 0 to 3).</summary>
    Type1,

    /// <summary>Two pairs, to 30 W at the source (class 4).</summary>
    Type2,

    /// <summary>Two or four pairs, to 60 W at the source (class 6).</summary>
    Type3,

    /// <summary>Four pairs (two for low classes), to 90 W at the source (class 8).</summary>
    Type4,
}

namespace Headroom.Engineering.Power;

/// <summary>Priority of a port or device as it stands on the wire. Source: IEEE 802.3, 79.3.2 and TIA-1057, seen in public source code.</summary>
public enum PowerPriority
{
    /// <summary>Not told.</summary>
    Unknown = 0,

    /// <summary>Last to lose power.</summary>
    Critical = 1,

    /// <summary>Between the two.</summary>
    High = 2,

    /// <summary>First to lose power.</summary>
    Low = 3,
}

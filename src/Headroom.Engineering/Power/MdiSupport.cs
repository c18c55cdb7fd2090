namespace Headroom.Engineering.Power;

/// <summary>What a port says of its power over the wire. Source: IEEE 802.3, 79.3.2, bits seen in public source code.</summary>
[Flags]
public enum MdiSupport
{
    /// <summary>A device without power support.</summary>
    None = 0,

    /// <summary>The port is a source (PSE); without it, a device (PD).</summary>
    IsSource = 1,

    /// <summary>Power is supported.</summary>
    Supported = 2,

    /// <summary>Power is enabled.</summary>
    Enabled = 4,

    /// <summary>The pairs can be chosen.</summary>
    PairControl = 8,
}

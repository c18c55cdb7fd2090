namespace Headroom.Engineering.Power;

/// <summary>Where the power comes from. Source: IEEE 802.3, 79.3.2 and TIA-1057, seen in public source code.</summary>
public enum PowerOrigin
{
    /// <summary>Not told, or a reserved value.</summary>
    Unknown,

    /// <summary>A source on its primary supply.</summary>
    Primary,

    /// <summary>A source on its backup supply.</summary>
    Backup,

    /// <summary>A device fed over the cable.</summary>
    Cable,

    /// <summary>A device with a supply of its own.</summary>
    Local,

    /// <summary>A device fed from both.</summary>
    CableAndLocal,
}

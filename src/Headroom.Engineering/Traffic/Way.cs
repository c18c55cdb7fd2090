namespace Headroom.Engineering.Traffic;

/// <summary>Which way of a link is looked at.</summary>
internal enum Way
{
    /// <summary>Whichever is busier.</summary>
    Busier,

    /// <summary>Towards the devices.</summary>
    Down,

    /// <summary>From the devices.</summary>
    Up,
}

namespace Headroom.Engineering.Acoustics;

/// <summary>How a sound is heard against the background.</summary>
public enum Hearing
{
    /// <summary>Ten decibels or more below it: not noticed, unless it has a tone.</summary>
    NotHeard,

    /// <summary>Below it: heard by one who listens for it.</summary>
    Faint,

    /// <summary>Up to five above it.</summary>
    Heard,

    /// <summary>Five to ten above it.</summary>
    Disturbing,

    /// <summary>Ten or more above it.</summary>
    VeryDisturbing,
}

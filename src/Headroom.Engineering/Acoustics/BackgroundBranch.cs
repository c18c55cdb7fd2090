namespace Headroom.Engineering.Acoustics;

/// <summary>Which way the room was taken out of a reading.</summary>
public enum BackgroundBranch
{
    /// <summary>15 dB or more above the background: the room is not in it.</summary>
    AsRead,

    /// <summary>3 to 15 dB: taken out by the formula.</summary>
    Corrected,

    /// <summary>0 to 3 dB: only an upper bound can be said.</summary>
    AtMost,

    /// <summary>Below the background: the two readings contradict each other.</summary>
    Contradicts,
}

namespace Headroom.Engineering.Acoustics;

/// <summary>How hard a talker tries (ANSI S3.5-1997).</summary>
public enum VocalEffort
{
    /// <summary>As in a quiet room.</summary>
    Normal,

    /// <summary>Raised voice.</summary>
    Raised,

    /// <summary>Loud voice.</summary>
    Loud,

    /// <summary>Shouting.</summary>
    Shout,
}

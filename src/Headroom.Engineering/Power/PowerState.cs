namespace Headroom.Engineering.Power;

/// <summary>The states of a site in which watts are counted.</summary>
public enum PowerState
{
    /// <summary>An ordinary hour.</summary>
    Typical,

    /// <summary>Everything at its most at once.</summary>
    Peak,

    /// <summary>Night: cameras with their infrared light on.</summary>
    Night,

    /// <summary>A night of frost: heaters on as well.</summary>
    Frost,

    /// <summary>The minutes after power comes back: everything starts at once.</summary>
    Start,
}

namespace Headroom.Engineering.Power;

/// <summary>Reservation by what the device drew in its first seconds.</summary>
/// <remarks>Source: IEEE 802.3, 145.2.8.2 and 145.3.8.2, times from memory; the behaviour was seen in a draft.</remarks>
public static class Autoclass
{
    /// <summary>Time after power-on by which the device draws its maximum [s]. Source: IEEE 802.3, 145.3.8.2, from memory.</summary>
    public const double DrawFromSeconds = 1.35;

    /// <summary>Time after power-on until which the device draws its maximum [s]. Source: IEEE 802.3, 145.3.8.2, from memory.</summary>
    public const double DrawToSeconds = 3.65;

    /// <summary>Earliest start of the source's measurement after power-on [s]. Source: IEEE 802.3, 145.2.8.2, from memory.</summary>
    public const double MeasureFromSecondsMin = 1.4;

    /// <summary>Latest start of the source's measurement after power-on [s]. Source: IEEE 802.3, 145.2.8.2, from memory.</summary>
    public const double MeasureFromSecondsMax = 1.6;

    /// <summary>Earliest end of the source's measurement after power-on [s]. Source: IEEE 802.3, 145.2.8.2, from memory.</summary>
    public const double MeasureToSecondsMin = 3.1;

    /// <summary>Latest end of the source's measurement after power-on [s]. Source: IEEE 802.3, 145.2.8.2, from memory.</summary>
    public const double MeasureToSecondsMax = 3.5;

    /// <summary>Power that a source keeps after measuring [W].</summary>
    /// <param name="measuredWatts">Most power measured at the source [W]; 0 or more.</param>
    /// <param name="marginWatts">Margin on top [W]; 0 or more; equipment differs.</param>
    /// <param name="grantedClass">Class granted, 0 to 8.</param>
    /// <param name="pse">Type of the source.</param>
    /// <returns>Power kept [W], never above the class's own.</returns>
    /// <remarks>Source: IEEE 802.3, 145.2.8.2; the standard's own margins are not at hand, hence the parameter.</remarks>
    public static double ReserveWatts(double measuredWatts, double marginWatts, int grantedClass, PoeType pse)
    {
        Require.AtLeast(0, measuredWatts, "W");
        Require.AtLeast(0, marginWatts, "W");
        return Math.Min(measuredWatts + marginWatts, PoeClasses.SourceWatts(grantedClass, pse));
    }
}

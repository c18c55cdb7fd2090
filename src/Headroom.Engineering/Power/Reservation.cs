namespace Headroom.Engineering.Power;

/// <summary>What a source sets aside so that a device may draw what was allocated to it.</summary>
public static class Reservation
{
    /// <summary>Power at the source for a power at the device [W].</summary>
    /// <param name="deviceWatts">Power allocated at the device [W]; 0 or more.</param>
    /// <param name="sourceVolts">Voltage at the source [V]; above 0.</param>
    /// <param name="loopOhms">Resistance out and back [Ω]; 0 or more.</param>
    /// <returns>Power at the source [W]; null when the loop cannot carry it.</returns>
    /// <remarks>Source: IEEE 802.3, Equations (33-2) and (145-2), numbers from memory.</remarks>
    public static double? SourceWatts(double deviceWatts, double sourceVolts, double loopOhms) =>
        ConstantPowerLoad.Solve(sourceVolts, loopOhms, deviceWatts)?.SourceWatts;

    /// <summary>Power at the source for an allocation within a granted class, at that class's worst voltage and loop [W].</summary>
    /// <param name="deviceWatts">Power allocated at the device [W]; 0 or more.</param>
    /// <param name="grantedClass">Class granted, 0 to 8.</param>
    /// <param name="pse">Type of the source.</param>
    /// <returns>Power at the source [W], never above the class's own; null when the class's loop cannot carry it.</returns>
    /// <remarks>
    /// Source: IEEE 802.3, Equations (33-2) and (145-2), numbers from memory. The published device powers are rounded up, so a full
    /// class comes out up to 0.08 W above its nominal power: hence the clamp.
    /// </remarks>
    public static double? ForClass(double deviceWatts, int grantedClass, PoeType pse)
    {
        var watts = SourceWatts(
            deviceWatts, PoeClasses.LeastSourceVolts(grantedClass, pse), PoeClasses.ChannelOhms(grantedClass, pse));
        return watts is { } found ? Math.Min(found, PoeClasses.SourceWatts(grantedClass, pse)) : null;
    }
}

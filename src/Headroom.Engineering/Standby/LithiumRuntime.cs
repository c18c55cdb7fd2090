namespace Headroom.Engineering.Standby;

/// <summary>How long a lithium iron phosphate battery holds a load, from its energy.</summary>
public static class LithiumRuntime
{
    /// <summary>The usable share of the energy where nobody says otherwise [1]: 0.8 to 0.95 is usual, from memory.</summary>
    public const double UsualDepth = 0.9;

    /// <summary>Time until it is empty [s].</summary>
    /// <param name="volts">Nominal voltage [V]; above 0.</param>
    /// <param name="ampereHours">Nominal capacity [Ah]; above 0.</param>
    /// <param name="usable">Share of the energy that may be used, age and cold included [1]; above 0, at most 1.</param>
    /// <param name="batteryWatts">Power at its terminals [W]; above 0.</param>
    /// <returns>Time [s]; the current limit of its protection is not looked at.</returns>
    /// <remarks>Source: energy over power; its capacity hardly depends on the current (exponent 1.01 to 1.05, from memory).</remarks>
    public static double Seconds(double volts, double ampereHours, double usable, double batteryWatts)
    {
        Require.Above0(volts, "V");
        Require.Above0(ampereHours, "Ah");
        Require.Share(usable);
        Require.Above0(batteryWatts, "W");
        return volts * ampereHours * usable / batteryWatts * 3600;
    }
}

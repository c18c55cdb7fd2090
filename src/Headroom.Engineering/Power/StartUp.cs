namespace Headroom.Engineering.Power;

/// <summary>From the plug to power good: times, currents and the charging of the device's input capacitor.</summary>
/// <remarks>Source: IEEE 802.3, Tables 33-10, 33-11 and 145-16, 33.3.7; all from memory save where a member says it was seen.</remarks>
public static class StartUp
{
    /// <summary>Most time for detection, Tdet [s]. Source: IEEE 802.3, Table 33-11, from memory.</summary>
    public const double DetectionSeconds = 0.500;

    /// <summary>Most time from a valid detection to power, classification included, Tpon [s]. Source: IEEE 802.3, Table 33-11, from memory; the rule was seen in a draft.</summary>
    public const double PowerOnSeconds = 0.400;

    /// <summary>Least time of a one-event classification [s]. Source: IEEE 802.3, Table 33-10, from memory.</summary>
    public const double ClassificationSecondsMin = 0.006;

    /// <summary>Most time of a one-event classification [s]. Source: IEEE 802.3, Table 33-10, from memory; 75 ms seen in a secondary document.</summary>
    public const double ClassificationSecondsMax = 0.075;

    /// <summary>Least time for which a source stands the inrush, TInrush [s]. Source: IEEE 802.3, Table 33-11, from memory.</summary>
    public const double InrushSecondsMin = 0.050;

    /// <summary>Most time for which a source stands the inrush, TInrush [s]. Source: IEEE 802.3, Table 33-11, from memory.</summary>
    public const double InrushSecondsMax = 0.075;

    /// <summary>Time within which a device ends its inrush [s]. Source: IEEE 802.3, 33.3.7, seen in a secondary document.</summary>
    public const double DeviceInrushSeconds = 0.050;

    /// <summary>Most input capacitance that needs no current limit of the device's own [F]. Source: IEEE 802.3, 33.3.7, from memory.</summary>
    public const double DeviceFreeFarads = 180e-6;

    /// <summary>Time for which a type 2 device keeps to class 3 power after power-up, at least [s]. Source: IEEE 802.3, 33.3.7, from memory.</summary>
    public const double Type2HoldSeconds = 0.080;

    /// <summary>Least rise time of the voltage [s]. Source: IEEE 802.3, Table 33-11, from memory.</summary>
    public const double RiseSecondsMin = 15e-6;

    /// <summary>Longest time from plugging in to power good on one port that is served at once [s].</summary>
    public const double WorstPlugInSeconds = DetectionSeconds + PowerOnSeconds + InrushSecondsMax;

    /// <summary>Least and most inrush current that a source allows a class, on all the pairs together [A].</summary>
    /// <param name="cls">Class granted, 0 to 8.</param>
    /// <remarks>Source: IEEE 802.3, Tables 33-11 and 145-16, from memory; classes 5 to 8 unconfirmed.</remarks>
    public static (double Least, double Most) InrushAmperes(int cls)
    {
        Require.Between(0, 8, cls);
        return cls switch
        {
            <= 4 => (0.400, 0.450),
            <= 6 => (0.400, 0.900),
            _ => (0.800, 0.900),
        };
    }

    /// <summary>Time to charge a capacitor at a constant current [s].</summary>
    /// <param name="farads">Capacitance [F]; 0 or more.</param>
    /// <param name="volts">Voltage to reach, from 0 [V]; 0 or more.</param>
    /// <param name="amperes">Charging current [A]; above 0.</param>
    /// <returns>Time [s], C V / I.</returns>
    /// <remarks>Source: circuit theory.</remarks>
    public static double ChargeSeconds(double farads, double volts, double amperes)
    {
        Require.AtLeast(0, farads, "F");
        Require.AtLeast(0, volts, "V");
        Require.Above0(amperes, "A");
        return farads * volts / amperes;
    }

    /// <summary>Largest capacitor that a constant current charges in a time [F].</summary>
    /// <param name="seconds">Time [s]; 0 or more.</param>
    /// <param name="volts">Voltage to reach, from 0 [V]; above 0.</param>
    /// <param name="amperes">Charging current [A]; 0 or more.</param>
    /// <returns>Capacitance [F], I t / V.</returns>
    /// <remarks>Source: circuit theory.</remarks>
    public static double MostFarads(double seconds, double volts, double amperes)
    {
        Require.AtLeast(0, seconds, "s");
        Require.Above0(volts, "V");
        Require.AtLeast(0, amperes, "A");
        return amperes * seconds / volts;
    }
}

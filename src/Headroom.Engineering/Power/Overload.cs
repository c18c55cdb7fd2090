namespace Headroom.Engineering.Power;

/// <summary>How long a source stands too much current, and what it does afterwards.</summary>
/// <remarks>Source: IEEE 802.3, Tables 33-11 and 145-16; all from memory save where a member says it was seen.</remarks>
public static class Overload
{
    /// <summary>Least time for which an overload is stood, Tcut [s]. Source: IEEE 802.3, Table 33-11, seen in a secondary document.</summary>
    public const double CutSecondsMin = 0.050;

    /// <summary>Most time for which an overload is stood, Tcut [s]. Source: IEEE 802.3, Table 33-11, seen in a secondary document.</summary>
    public const double CutSecondsMax = 0.075;

    /// <summary>Least wait after a fault before the port tries again, Ted [s]. Source: IEEE 802.3, Table 33-11, from memory.</summary>
    public const double FaultWaitSeconds = 0.750;

    /// <summary>Least wait of a source on the spare pairs after a failed detection, Tdbo [s]. Source: IEEE 802.3, Table 33-11, from memory.</summary>
    public const double BackOffSeconds = 2;

    /// <summary>Most time for the voltage to fall below <see cref="OffVolts"/> [s]. Source: IEEE 802.3, Table 33-11, from memory.</summary>
    public const double TurnOffSecondsMax = 0.500;

    /// <summary>Voltage below which a port counts as off [V]. Source: IEEE 802.3, Table 33-11, from memory.</summary>
    public const double OffVolts = 2.8;

    /// <summary>Least current of the short-circuit limit, Ilim [A].</summary>
    /// <param name="pse">Type of the source.</param>
    /// <returns>Current [A]; null for types 3 and 4, whose figure is not known here.</returns>
    /// <remarks>Source: IEEE 802.3, Table 33-11, from memory.</remarks>
    public static double? ShortCircuitAmperesMin(PoeType pse) => pse switch
    {
        PoeType.Type1 => 0.400,
        PoeType.Type2 => 1.14 * PoeTypes.Of(PoeType.Type2).AmperesPerPairset,
        _ => null,
    };

    /// <summary>Least and most time at the short-circuit limit, Tlim [s]; null where the figure is not known here.</summary>
    /// <param name="pse">Type of the source.</param>
    /// <param name="cls">Class granted, 0 to 8.</param>
    /// <remarks>Source: IEEE 802.3, Tables 33-11 and 145-16, from memory; 6 ms for classes 7 and 8 unconfirmed.</remarks>
    public static (double? Least, double? Most) ShortCircuitSeconds(PoeType pse, int cls)
    {
        Require.Between(0, 8, cls);
        return pse switch
        {
            PoeType.Type1 => (0.050, 0.075),
            PoeType.Type2 => (0.010, 0.075),
            _ when cls >= 7 => (0.006, null),
            _ => (null, null),
        };
    }
}

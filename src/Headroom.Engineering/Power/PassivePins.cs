namespace Headroom.Engineering.Power;

/// <summary>Passive injection: a voltage that is on the pins whatever is plugged in. Nothing is detected, classed or kept alive.</summary>
/// <remarks>Gigabit injectors put power on data pairs too and differ from maker to maker: their pins are unknown until read off the unit.</remarks>
public static class PassivePins
{
    /// <summary>Voltage by which a device to IEEE 802.3 has turned on [V]. Source: IEEE 802.3, Table 33-18, from memory.</summary>
    public const double TurnOnVolts = 42;

    /// <summary>Voltage at which a device to IEEE 802.3 has turned off [V]. Source: IEEE 802.3, Table 33-18, from memory.</summary>
    public const double TurnOffVolts = 30;

    /// <summary>Injector for 10 and 100 Mb/s on the spare pairs, the habit called mode B. Source: seen in several secondary documents.</summary>
    public static PowerPins Injector { get; } = new([4, 5], [7, 8], OneIsPositive: true);

    /// <summary>Alternative A of IEEE 802.3, on data pairs, either polarity. Source: seen in several secondary documents.</summary>
    public static PowerPins AlternativeA { get; } = new([1, 2], [3, 6], OneIsPositive: null);

    /// <summary>Alternative B of IEEE 802.3, the pins of the passive injector. Source: seen in several secondary documents.</summary>
    public static PowerPins AlternativeB { get; } = new([4, 5], [7, 8], OneIsPositive: true);

    /// <summary>Whether a load starts at a voltage.</summary>
    /// <param name="volts">Voltage at the load's connector [V]; 0 or more.</param>
    /// <param name="turnOnVolts">Voltage by which the load has turned on [V]; above 0.</param>
    /// <returns>True at or above the turn-on voltage.</returns>
    /// <remarks>Source: IEEE 802.3, Table 33-18, from memory, for loads to the standard; else the load's own sheet.</remarks>
    public static bool StartsOn(double volts, double turnOnVolts)
    {
        Require.AtLeast(0, volts, "V");
        Require.Above0(turnOnVolts, "V");
        return volts >= turnOnVolts;
    }
}

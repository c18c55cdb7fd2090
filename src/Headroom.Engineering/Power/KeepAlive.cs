namespace Headroom.Engineering.Power;

/// <summary>The signature by which a sleeping device keeps its port powered (MPS in the standard).</summary>
/// <remarks>Source: IEEE 802.3, 33.2.9, 33.3.8, 145.2.12 and 145.3.9; amplitudes and times of the sources were seen in secondary documents.</remarks>
public static class KeepAlive
{
    /// <summary>Current below which a type 1 or 2 source drops the port [A]. Source: IEEE 802.3, Table 33-11, from memory.</summary>
    public const double DropBelowAmperes = 0.005;

    /// <summary>Current from which a type 1 or 2 source keeps the port [A]. Source: IEEE 802.3, Table 33-11, from memory.</summary>
    public const double KeepFromAmperes = 0.010;

    /// <summary>Least load that a device must show.</summary>
    /// <param name="pse">Type of the source; a type 3 or 4 device on an older source keeps to the older rule.</param>
    /// <param name="device">Type of the device.</param>
    /// <param name="cls">Class granted, 0 to 8; 0 counts as 3.</param>
    /// <remarks>Source: IEEE 802.3, 33.3.8 (seen) and 145.3.9 (amplitudes seen, times from memory).</remarks>
    public static KeepAlivePulse Pulse(PoeType pse, PoeType device, int cls)
    {
        Require.Between(0, 8, cls);
        return pse >= PoeType.Type3 && device >= PoeType.Type3
            ? new KeepAlivePulse(cls >= 5 ? 0.016 : 0.010, OnSeconds: 0.007, OffSeconds: 0.310)
            : new KeepAlivePulse(0.010, OnSeconds: 0.075, OffSeconds: 0.250);
    }

    /// <summary>Times by which a source judges.</summary>
    /// <param name="pse">Type of the source.</param>
    /// <remarks>Source: IEEE 802.3, 33.2.9 and 145.2.12, seen in a secondary document.</remarks>
    public static KeepAliveTimes Times(PoeType pse) => pse >= PoeType.Type3
        ? new KeepAliveTimes(0.006, DropSecondsMin: 0.320, DropSecondsMax: 0.400)
        : new KeepAliveTimes(0.060, DropSecondsMin: 0.300, DropSecondsMax: 0.400);

    /// <summary>Mean power of a device that draws nothing but the signature [W].</summary>
    /// <param name="volts">Voltage at the device [V]; above 0.</param>
    /// <param name="pulse">The signature.</param>
    /// <returns>Mean power [W].</returns>
    /// <remarks>Source: mean of a pulse train.</remarks>
    public static double MeanWatts(double volts, KeepAlivePulse pulse)
    {
        Require.Above0(volts, "V");
        return volts * pulse.MeanAmperes;
    }

    /// <summary>What a source does with a steady current.</summary>
    /// <param name="amperes">Current that the device draws all the time [A]; 0 or more.</param>
    /// <param name="pse">Type of the source.</param>
    /// <param name="cls">Class granted, 0 to 8; matters for types 3 and 4.</param>
    /// <returns>Whether the port stays powered. Types 3 and 4: either below the device's own least current, as the drop threshold is not known here.</returns>
    /// <remarks>Source: IEEE 802.3, Table 33-11, from memory; 145.3.9, amplitudes seen in secondary documents.</remarks>
    public static SourceAnswer Holds(double amperes, PoeType pse, int cls)
    {
        Require.AtLeast(0, amperes, "A");
        if (amperes >= Pulse(pse, pse, cls).Amperes)
            return SourceAnswer.Accepts;
        return pse <= PoeType.Type2 && amperes < DropBelowAmperes ? SourceAnswer.Rejects : SourceAnswer.Either;
    }

    /// <summary>What a source does with a current that comes in pulses.</summary>
    /// <param name="pulse">The current and its times.</param>
    /// <param name="pse">Type of the source.</param>
    /// <param name="cls">Class granted, 0 to 8; matters for types 3 and 4.</param>
    /// <returns>Accepts when height, length and gap all suffice, rejects when the height is too small or the gap too long, either otherwise.</returns>
    public static SourceAnswer Holds(KeepAlivePulse pulse, PoeType pse, int cls)
    {
        var times = Times(pse);
        var height = Holds(pulse.Amperes, pse, cls);
        if (height == SourceAnswer.Rejects || pulse.OffSeconds > times.DropSecondsMax)
            return SourceAnswer.Rejects;
        return height == SourceAnswer.Accepts && pulse.OnSeconds >= times.ValidSeconds && pulse.OffSeconds < times.DropSecondsMin
            ? SourceAnswer.Accepts : SourceAnswer.Either;
    }
}

namespace Headroom.Engineering.Standby;

/// <summary>What a load asks of a standby supply and of the battery behind it.</summary>
public static class ConverterLoad
{
    /// <summary>Power at the terminals of the battery [W].</summary>
    /// <param name="loadWatts">Load at the output [W]; 0 or more.</param>
    /// <param name="efficiency">Of the conversion on battery [1]; above 0, at most 1.</param>
    /// <param name="noLoadWatts">What the converter draws with nothing connected [W]; 0 where only one efficiency is known.</param>
    /// <returns>Power [W], P0 + P / η.</returns>
    /// <remarks>Source: balance of power.</remarks>
    public static double BatteryWatts(double loadWatts, double efficiency, double noLoadWatts = 0)
    {
        Require.AtLeast(0, loadWatts, "W");
        Require.Share(efficiency);
        Require.AtLeast(0, noLoadWatts, "W");
        return noLoadWatts + loadWatts / efficiency;
    }

    /// <summary>Apparent power of a load [VA].</summary>
    /// <param name="watts">Real power [W]; 0 or more.</param>
    /// <param name="powerFactor">Real over apparent power [1]; above 0, at most 1.</param>
    /// <returns>Apparent power [VA].</returns>
    /// <remarks>Source: P = S · power factor.</remarks>
    public static double ApparentVoltAmperes(double watts, double powerFactor)
    {
        Require.AtLeast(0, watts, "W");
        Require.Share(powerFactor);
        return watts / powerFactor;
    }

    /// <summary>The most watts that a supply gives at a power factor: the smaller of both limits [W].</summary>
    /// <param name="realWatts">Its limit in real power [W]; above 0.</param>
    /// <param name="voltAmperes">Its limit in apparent power [VA]; above 0.</param>
    /// <param name="powerFactor">Of the load [1]; above 0, at most 1.</param>
    /// <returns>Watts [W].</returns>
    /// <remarks>Source: both limits bind.</remarks>
    public static double MostWatts(double realWatts, double voltAmperes, double powerFactor)
    {
        Require.Above0(realWatts, "W");
        Require.Above0(voltAmperes, "VA");
        Require.Share(powerFactor);
        return Math.Min(realWatts, voltAmperes * powerFactor);
    }

    /// <summary>The most watts the powered ports of a switch may give so that its supply takes no more than is left for it [W].</summary>
    /// <param name="feedWatts">What is left for the switch at its feed [W]; 0 or more.</param>
    /// <param name="baseWatts">What the switch draws itself, behind its supply [W]; 0 or more.</param>
    /// <param name="efficiency">Of its supply [1]; above 0, at most 1.</param>
    /// <param name="pathEfficiency">Of the way from the supply to the ports [1]; above 0, at most 1.</param>
    /// <returns>Watts at the ports [W]; null when the switch alone asks more.</returns>
    /// <remarks>Source: balance of power, P_ports = (P_feed · η − P_own) · η_path.</remarks>
    public static double? PortCapWatts(double feedWatts, double baseWatts, double efficiency, double pathEfficiency = 1)
    {
        Require.AtLeast(0, feedWatts, "W");
        Require.AtLeast(0, baseWatts, "W");
        Require.Share(efficiency);
        Require.Share(pathEfficiency);
        var watts = (feedWatts * efficiency - baseWatts) * pathEfficiency;
        return watts < 0 ? null : watts;
    }

    /// <summary>Power that counts for one block, derated [W].</summary>
    /// <param name="batteryWatts">Power at the terminals of the battery [W]; 0 or more.</param>
    /// <param name="blocks">Blocks that share it; 1 or more.</param>
    /// <param name="derating">Product of the factors for cold, age and margin [1]; above 0.</param>
    /// <returns>Watts of one block [W].</returns>
    /// <remarks>Source: IEEE Std 485, 6.2, from memory: the load is multiplied, never the time.</remarks>
    public static double BlockWatts(double batteryWatts, int blocks, double derating = 1)
    {
        Require.AtLeast(0, batteryWatts, "W");
        Require.Between(1, 1000, blocks);
        Require.Above0(derating, "as a factor");
        return batteryWatts / blocks * derating;
    }

    /// <summary>Charge that a load takes from a battery, by its mean current [Ah].</summary>
    /// <param name="batteryWatts">Power at the terminals, derated [W]; 0 or more.</param>
    /// <param name="volts">Mean voltage of the battery [V]; above 0.</param>
    /// <param name="hours">How long [h]; 0 or more.</param>
    /// <returns>Charge [Ah].</returns>
    /// <remarks>Source: circuit theory; factors as in IEEE Std 485.</remarks>
    public static double AmpereHours(double batteryWatts, double volts, double hours)
    {
        Require.AtLeast(0, batteryWatts, "W");
        Require.Above0(volts, "V");
        Require.AtLeast(0, hours, "h");
        return batteryWatts / volts * hours;
    }
}

namespace Headroom.Engineering.Power;

/// <summary>A load that takes the same power at any voltage (a powered device with its converter) behind a resistive loop.</summary>
public static class ConstantPowerLoad
{
    /// <summary>Voltage, current and loss at which the load settles.</summary>
    /// <param name="sourceVolts">Voltage at the source [V]; above 0.</param>
    /// <param name="loopOhms">Resistance out and back [Ω]; 0 or more.</param>
    /// <param name="loadWatts">Power taken at the load's connector [W]; 0 or more.</param>
    /// <returns>The stable operating point (the higher voltage of the two), or null when the loop cannot carry the load (above V²/4R).</returns>
    /// <remarks>Source: circuit theory, P = V I - I² R solved for the current.</remarks>
    public static OperatingPoint? Solve(double sourceVolts, double loopOhms, double loadWatts)
    {
        Check(sourceVolts, loopOhms);
        Require.AtLeast(0, loadWatts, "W");
        var discriminant = sourceVolts * sourceVolts - 4 * loopOhms * loadWatts;
        // Tested first: an iteration would end on a meaningless point instead of saying that there is none.
        if (discriminant < 0)
            return null;
        // As 2P/(V+√d), the textbook (V-√d)/2R loses digits at light load and is 0/0 at R = 0.
        var twiceLoadVolts = sourceVolts + Math.Sqrt(discriminant);
        var amperes = 2 * loadWatts / twiceLoadVolts;
        return new OperatingPoint(
            LoadVolts: twiceLoadVolts / 2, Amperes: amperes,
            LostWatts: amperes * amperes * loopOhms, SourceWatts: sourceVolts * amperes);
    }

    /// <summary>What arrives at the load when the source delivers a known power: a port's reading, or a class's power.</summary>
    /// <param name="sourceVolts">Voltage at the source [V]; above 0.</param>
    /// <param name="loopOhms">Resistance out and back [Ω]; 0 or more.</param>
    /// <param name="sourceWatts">Power that the source delivers [W]; 0 or more.</param>
    /// <returns>The operating point, or null when no load can settle there (less than half the voltage would be left).</returns>
    /// <remarks>Source: circuit theory, I = P / V at the source.</remarks>
    public static OperatingPoint? FromSource(double sourceVolts, double loopOhms, double sourceWatts)
    {
        Check(sourceVolts, loopOhms);
        Require.AtLeast(0, sourceWatts, "W");
        var amperes = sourceWatts / sourceVolts;
        var loadVolts = sourceVolts - amperes * loopOhms;
        return loadVolts < sourceVolts / 2 ? null : new OperatingPoint(loadVolts, amperes, amperes * amperes * loopOhms, sourceWatts);
    }

    /// <summary>Most power that the loop can carry to a load at all [W].</summary>
    /// <param name="sourceVolts">Voltage at the source [V]; above 0.</param>
    /// <param name="loopOhms">Resistance out and back [Ω]; 0 or more.</param>
    /// <returns>V²/4R [W], reached with half the voltage at the load; infinity at 0 Ω.</returns>
    /// <remarks>Source: circuit theory, matched load.</remarks>
    public static double MostWatts(double sourceVolts, double loopOhms)
    {
        Check(sourceVolts, loopOhms);
        return sourceVolts * sourceVolts / (4 * loopOhms);
    }

    /// <summary>Most power a load may take while its voltage stays at or above a least value [W].</summary>
    /// <param name="sourceVolts">Voltage at the source [V]; above 0.</param>
    /// <param name="loopOhms">Resistance out and back [Ω]; 0 or more.</param>
    /// <param name="leastLoadVolts">Least voltage allowed at the load [V]; 0 or more.</param>
    /// <returns>Power at the load [W]; infinity at 0 Ω; null when the source itself is below the least voltage.</returns>
    /// <remarks>Source: circuit theory, (V - Vmin) Vmin / R; with Vmin below V/2 the loop's own limit V²/4R comes first.</remarks>
    public static double? MostWattsKeeping(double sourceVolts, double loopOhms, double leastLoadVolts)
    {
        Check(sourceVolts, loopOhms);
        Require.AtLeast(0, leastLoadVolts, "V");
        if (leastLoadVolts > sourceVolts)
            return null;
        return loopOhms == 0 ? double.PositiveInfinity : VoltsSquared(sourceVolts, leastLoadVolts) / loopOhms;
    }

    /// <summary>Longest loop, as a resistance, over which a load keeps its least voltage [Ω].</summary>
    /// <param name="sourceVolts">Voltage at the source [V]; above 0.</param>
    /// <param name="leastLoadVolts">Least voltage allowed at the load [V]; 0 or more.</param>
    /// <param name="loadWatts">Power taken at the load's connector [W]; 0 or more.</param>
    /// <returns>Resistance out and back [Ω]; infinity for a load of 0 W; null when the source itself is below the least voltage.</returns>
    /// <remarks>Source: circuit theory, (V - Vmin) Vmin / P; with Vmin below V/2 the limit is V²/4P.</remarks>
    public static double? MostOhmsKeeping(double sourceVolts, double leastLoadVolts, double loadWatts)
    {
        Require.Above0(sourceVolts, "V");
        Require.AtLeast(0, leastLoadVolts, "V");
        Require.AtLeast(0, loadWatts, "W");
        if (leastLoadVolts > sourceVolts)
            return null;
        return loadWatts == 0 ? double.PositiveInfinity : VoltsSquared(sourceVolts, leastLoadVolts) / loadWatts;
    }

    // Largest R P on the stable branch, where the load sees V/2 or more: below that there is nothing to keep.
    private static double VoltsSquared(double sourceVolts, double leastLoadVolts)
    {
        var kept = Math.Max(leastLoadVolts, sourceVolts / 2);
        return (sourceVolts - kept) * kept;
    }

    private static void Check(double sourceVolts, double loopOhms)
    {
        Require.Above0(sourceVolts, "V");
        Require.AtLeast(0, loopOhms, "Ω");
    }
}

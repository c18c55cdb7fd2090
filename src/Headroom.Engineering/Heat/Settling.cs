namespace Headroom.Engineering.Heat;

/// <summary>How long it takes until a cupboard is as warm as it gets.</summary>
public static class Settling
{
    /// <summary>The time constant.</summary>
    /// <param name="joulesPerKelvin">Heat that equipment and walls take up [J/K]; above 0.</param>
    /// <param name="wattsPerKelvin">Heat that leaves for a kelvin [W/K]; above 0.</param>
    /// <returns>The time constant [s].</returns>
    /// <remarks>Source: first-order warming, C / G.</remarks>
    public static double Seconds(double joulesPerKelvin, double wattsPerKelvin)
    {
        Require.Above0(joulesPerKelvin, "J/K");
        Require.Above0(wattsPerKelvin, "W/K");
        return joulesPerKelvin / wattsPerKelvin;
    }

    /// <summary>Share of the whole rise that is there after a time.</summary>
    /// <param name="seconds">The time since it was closed or switched on [s]; 0 or more.</param>
    /// <param name="constant">The time constant [s]; above 0.</param>
    /// <returns>The share [1].</returns>
    /// <remarks>Source: first-order warming, 1 − e^(−t/τ).</remarks>
    public static double Reached(double seconds, double constant)
    {
        Require.AtLeast(0, seconds, "s");
        Require.Above0(constant, "s");
        return 1 - Math.Exp(-seconds / constant);
    }

    /// <summary>Time until a share of the whole rise is there.</summary>
    /// <param name="share">The share [1]; above 0, below 1.</param>
    /// <param name="constant">The time constant [s]; above 0.</param>
    /// <returns>The time [s].</returns>
    /// <remarks>Source: the same, solved for the time.</remarks>
    public static double Until(double share, double constant)
    {
        Require.Above0(constant, "s");
        if (!(share is > 0 and < 1))
            throw new ArgumentOutOfRangeException(nameof(share), share, FormattableString.Invariant($"share is {share}; it must be above 0 and below 1."));
        return -constant * Math.Log(1 - share);
    }
}

namespace Headroom.Engineering.Racking;

/// <summary>What a strip of outlets carries.</summary>
public static class StripLoad
{
    /// <summary>Watts over volt-amperes where nobody measured them. Source: common practice for supplies with correction, no source.</summary>
    public const double UsualPowerFactor = 0.9;

    /// <summary>The current of a load on the mains.</summary>
    /// <param name="watts">The load [W]; 0 or more.</param>
    /// <param name="volts">The mains voltage [V]; above 0.</param>
    /// <param name="powerFactor">Watts over volt-amperes [1]; above 0 and at most 1.</param>
    /// <returns>Current [A].</returns>
    /// <remarks>Source: P = U I cos φ.</remarks>
    public static double Amperes(double watts, double volts, double powerFactor)
    {
        Require.AtLeast(0, watts, "W");
        Require.Above0(volts, "V");
        Require.Share(powerFactor);
        return watts / volts / powerFactor;
    }
}

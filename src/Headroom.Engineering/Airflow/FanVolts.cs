namespace Headroom.Engineering.Airflow;

/// <summary>What a small brushless fan makes of another voltage.</summary>
public static class FanVolts
{
    /// <summary>How far below and above its rating a label usually lets a fan run [1]: 10.8 to 13.2 V for 12 V.</summary>
    public const double LabelShare = 0.1;

    /// <summary>Where a fan of unknown start may not start any more, over its rating [1]: 7 V for 12 V.</summary>
    public const double StartShare = 7.0 / 12;

    /// <summary>Speed at a voltage over that at the rating.</summary>
    /// <param name="ratedVolts">Its rated voltage [V]; above <paramref name="dropVolts"/>.</param>
    /// <param name="volts">The voltage there is [V]; 0 or more.</param>
    /// <param name="dropVolts">What its electronics keep [V]; 0 to 1.</param>
    /// <returns>Speed / speed at the rating [1]; 0 where nothing is left for the motor.</returns>
    /// <remarks>Source: a brushless fan turns about in proportion to its voltage less a drop of 0 to 1 V, seen in trade pages.</remarks>
    public static double SpeedRatio(double ratedVolts, double volts, double dropVolts = 0)
    {
        Require.AtLeast(0, volts, "V");
        Require.AtLeast(0, dropVolts, "V");
        Require.Above0(ratedVolts - dropVolts, "V");
        return Math.Max(0, volts - dropVolts) / (ratedVolts - dropVolts);
    }

    /// <summary>Heat in the winding over that at the rating, when the voltage is above it.</summary>
    /// <param name="ratedVolts">Its rated voltage [V]; above 0.</param>
    /// <param name="volts">The voltage there is [V]; 0 or more.</param>
    /// <returns>The ratio [1], at most this.</returns>
    /// <remarks>Source: heat of a resistance goes with the square of the voltage.</remarks>
    public static double WindingHeat(double ratedVolts, double volts)
    {
        Require.Above0(ratedVolts, "V");
        return volts / ratedVolts * (volts / ratedVolts);
    }

    /// <summary>Says how a fan takes a voltage.</summary>
    /// <param name="ratedVolts">Its rated voltage [V]; above 0.</param>
    /// <param name="volts">The voltage there is [V]; 0 or more.</param>
    /// <param name="startVolts">From what voltage it starts [V]; null when not declared.</param>
    /// <returns>How it takes it.</returns>
    /// <remarks>Source: labels allow 10 % either way unless they say more (common practice); without a declared start seven twelfths of the rating, since reports contradict each other.</remarks>
    public static FanFit Fit(double ratedVolts, double volts, double? startVolts = null)
    {
        Require.Above0(ratedVolts, "V");
        // A hair for binary digits: 1.1 times 12 is not above 13.2.
        if (volts > ratedVolts * (1 + LabelShare) * (1 + 1e-9))
            return FanFit.Hazard;
        if (volts < (startVolts ?? ratedVolts * StartShare) * (1 - 1e-9))
            return FanFit.MayNotStart;
        return volts < ratedVolts * (1 - LabelShare) * (1 - 1e-9) ? FanFit.Slow : FanFit.Fits;
    }
}

namespace Headroom.Engineering.Reliability;

/// <summary>What a soak before delivery is worth where units fail more often while they are new.</summary>
public static class EarlyLife
{
    /// <summary>Below so many failures no shape is to be fitted: common practice, no source.</summary>
    public const int FewestToFit = 10;

    /// <summary>Hours of a year [h].</summary>
    public const double YearHours = 8760;

    /// <summary>Share that fails within a time [1].</summary>
    /// <param name="shape">Shape of the life [1]; above 0, below 1 where new units fail more often.</param>
    /// <param name="scaleHours">Scale of the life [h]; above 0.</param>
    /// <param name="hours">The time [h]; 0 or more.</param>
    /// <returns>The share.</returns>
    /// <remarks>Source: Weibull, 1 − exp(−(t / η)^β).</remarks>
    public static double FailedWithin(double shape, double scaleHours, double hours)
    {
        Require.Above0(shape, "");
        Require.Above0(scaleHours, "h");
        Require.AtLeast(0, hours, "h");
        return -Math.Exp(-Math.Pow(hours / scaleHours, shape)) + 1;
    }

    /// <summary>Share that fails in the first year at the client's after a soak [1].</summary>
    /// <param name="shape">Shape of the life [1]; above 0.</param>
    /// <param name="scaleHours">Scale of the life [h]; above 0.</param>
    /// <param name="soakHours">Hours of the soak [h]; 0 or more.</param>
    /// <returns>The share of those that left the soak alive.</returns>
    /// <remarks>Source: Weibull, 1 − R(t + 8760 h) / R(t).</remarks>
    public static double FirstYearAfter(double shape, double scaleHours, double soakHours)
    {
        var (before, after) = (1 - FailedWithin(shape, scaleHours, soakHours), 1 - FailedWithin(shape, scaleHours, soakHours + YearHours));
        return 1 - after / before;
    }
}

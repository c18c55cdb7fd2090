namespace Headroom.Engineering.Years;

/// <summary>How often and how long, by a rate a year.</summary>
public static class Rates
{
    // So that two and a half times 0.4 a year make one.
    private const double Rounding = 1e-9;

    /// <summary>How many devices are added by a number a year; only whole ones count.</summary>
    /// <param name="yearly">How many a year [1/year]; 0 or more.</param>
    /// <param name="years">Time from today [years]; 0 or more.</param>
    /// <returns>The count.</returns>
    /// <remarks>Source: arithmetic.</remarks>
    public static int Added(double yearly, double years) => (int)Math.Floor(yearly * years + Rounding);

    /// <summary>How many devices are added by a share a year of what there is, each year of what there is then; only whole ones count.</summary>
    /// <param name="before">How many there are today; 0 or more.</param>
    /// <param name="yearly">The share a year [1]; 0 or more.</param>
    /// <param name="years">Time from today [years]; 0 or more.</param>
    /// <returns>The count.</returns>
    /// <remarks>Source: compound growth, n ((1 + r)^t − 1).</remarks>
    public static int AddedByShare(int before, double yearly, double years) => (int)Math.Floor(before * (Math.Pow(1 + yearly, years) - 1) + Rounding);

    /// <summary>For how long dust has gathered [years]: at the moment of a cleaning, just before it.</summary>
    /// <param name="years">Time since it was clean [years]; 0 or more.</param>
    /// <param name="every">Time between two cleanings [years]; null when nobody cleans.</param>
    /// <returns>The time [years].</returns>
    /// <remarks>Source: arithmetic.</remarks>
    public static double SinceCleaning(double years, double? every) =>
        every is not { } interval || years <= interval ? years : years - interval * Math.Ceiling(years / interval - 1 - Rounding);
}

namespace Headroom.Engineering.Money;

/// <summary>What running something costs.</summary>
public static class Energy
{
    /// <summary>Hours of a year of 365 days [h].</summary>
    public const int HoursOfAYear = 8760;

    /// <summary>Kilowatt-hours of a year.</summary>
    /// <param name="mainsWatts">What is taken from the mains all the time [W]; 0 or more.</param>
    /// <returns>Energy [kWh].</returns>
    /// <remarks>Source: P · 8760 h.</remarks>
    public static decimal KilowattHoursAYear(double mainsWatts)
    {
        Require.AtLeast(0, mainsWatts, "W");
        return (decimal)mainsWatts * HoursOfAYear / 1000;
    }
}

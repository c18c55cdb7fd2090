namespace Headroom.Engineering.Standby;

/// <summary>What cold and age take from a battery: factors by which its load counts for more.</summary>
public static class BatteryDerating
{
    /// <summary>The factor at the end of life, when four fifths of the capacity are left [1]. Source: IEEE Std 485, 6.2, from memory; seen in public facility criteria.</summary>
    public const double EndOfLife = 1.25;

    /// <summary>The factor taken past the end of life, when half may be left [1]: common practice, no source.</summary>
    public const double PastLife = 2;

    private const double WarmFahrenheit = 77;

    private static readonly double[] Fahrenheit = [25, 30, 35, 40, 45, 50, 55, 60, 65, 68, 70, 72, 75, 77, 80, 85, 90, 95, 100, 105, 110, 115, 120];

    private static readonly double[] Factors =
    [
        1.520, 1.430, 1.350, 1.300, 1.250, 1.190, 1.150, 1.110, 1.080, 1.056, 1.040, 1.029, 1.011, 1.000,
        0.980, 0.960, 0.940, 0.930, 0.910, 0.890, 0.880, 0.870, 0.860,
    ];

    /// <summary>Factor of a lead battery by its temperature [1].</summary>
    /// <param name="celsius">Temperature of the battery [°C].</param>
    /// <param name="creditHeat">True to count that a warm battery gives more; by default nothing is taken for it.</param>
    /// <returns>The factor; null outside -3.9 to 48.9 °C.</returns>
    /// <remarks>Source: IEEE Std 485, Table 1, from memory; the rows from 40 to 120 °F were seen in a public library of tests. Straight lines in °F.</remarks>
    public static double? LeadTemperature(double celsius, bool creditHeat = false)
    {
        var fahrenheit = celsius * 9 / 5 + 32;
        if (!(fahrenheit >= Fahrenheit[0] && fahrenheit <= Fahrenheit[^1]))
            return null;
        if (!creditHeat && fahrenheit >= WarmFahrenheit)
            return 1;
        var high = 1;
        while (fahrenheit > Fahrenheit[high])
            high++;
        return Along(fahrenheit, (Fahrenheit[high - 1], Factors[high - 1]), (Fahrenheit[high], Factors[high]));
    }

    /// <summary>Factor of a lithium iron phosphate battery by its temperature [1].</summary>
    /// <param name="celsius">Temperature of the battery [°C].</param>
    /// <returns>The factor, 1 from 25 °C on; null below freezing, where it must not be charged.</returns>
    /// <remarks>Source: 0.85 of the capacity at 0 °C and 0.95 at 10 °C, seen in a public model, weak; straight lines between.</remarks>
    public static double? LithiumTemperature(double celsius) => celsius switch
    {
        < 0 => null,
        < 10 => 1 / Along(celsius, (0, 0.85), (10, 0.95)),
        < 25 => 1 / Along(celsius, (10, 0.95), (25, 1)),
        <= 60 => 1,
        _ => null,
    };

    /// <summary>Factor by age [1]: 1 when new, 1.25 at the end of life.</summary>
    /// <param name="ageYears">Age [years]; 0 or more.</param>
    /// <param name="lifeYears">Life at its temperature [years]; above 0.</param>
    /// <returns>A straight line to the end of life, twice the load past it.</returns>
    /// <remarks>Source: four fifths are left at the end of life (IEEE Std 485, 6.2, from memory); the straight line is assumed.</remarks>
    public static double Age(double ageYears, double lifeYears)
    {
        Require.AtLeast(0, ageYears, "years");
        Require.Above0(lifeYears, "years");
        return ageYears > lifeYears ? PastLife : 1 + (EndOfLife - 1) * ageYears / lifeYears;
    }

    /// <summary>Share of its design life that a lead battery reaches on float [1].</summary>
    /// <param name="celsius">Mean temperature of the battery [°C].</param>
    /// <param name="kelvinsPerHalf">By how much warmth halves life [K]; 8 to 10.</param>
    /// <returns>1 up to 25 °C, half for each step above.</returns>
    /// <remarks>Source: halving for 8 to 10 °C above 25 °C, seen in an education page on heat and loading.</remarks>
    public static double FloatLife(double celsius, double kelvinsPerHalf = 8.33)
    {
        Require.Above0(kelvinsPerHalf, "K");
        return celsius <= 25 ? 1 : Math.Pow(0.5, (celsius - 25) / kelvinsPerHalf);
    }

    private static double Along(double at, (double X, double Y) low, (double X, double Y) high) => low.Y + (high.Y - low.Y) * (at - low.X) / (high.X - low.X);
}

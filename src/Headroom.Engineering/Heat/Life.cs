namespace Headroom.Engineering.Heat;

/// <summary>How long parts last at a temperature. All of these are rough: three rules for one fan differ by 1.8.</summary>
public static class Life
{
    /// <summary>The most a claim on a capacitor is worth [h]: 15 years.</summary>
    public const double MostCapacitorHours = 131_400;

    /// <summary>A ball-bearing fan where nothing is declared: tenth of them gone at 40 °C [h], assumed; half of it for a sleeve bearing.</summary>
    public const double FanHours = 60_000;

    /// <summary>The temperature of that [°C].</summary>
    public const double FanCelsius = 40;

    // Boltzmann's constant [eV/K].
    private const double Boltzmann = 8.617333e-5;

    /// <summary>Life at another temperature by a rule of so many times for so many kelvins.</summary>
    /// <param name="hours">Life at <paramref name="from"/> [h]; above 0.</param>
    /// <param name="from">The temperature of that life [°C].</param>
    /// <param name="to">The temperature wanted [°C].</param>
    /// <param name="rule">By what it shrinks [1], for how many kelvins [K].</param>
    /// <returns>The life [h].</returns>
    /// <remarks>Source: rules of the trade: capacitor 2 for 10 K; fan 1.5 for 10 K, 2 for 15 K or 2 for 10 K; lead battery 2 for 8 to 10 K.</remarks>
    public static double At(double hours, double from, double to, (double Factor, double Kelvins) rule)
    {
        Require.Above0(hours, "h");
        return hours * Math.Pow(rule.Factor, (from - to) / rule.Kelvins);
    }

    /// <summary>The capacitor rule.</summary>
    public static (double Factor, double Kelvins) Capacitor => (2, 10);

    /// <summary>The three fan rules.</summary>
    public static IReadOnlyList<(double Factor, double Kelvins)> Fan { get; } = [(1.5, 10), (2, 15), (2, 10)];

    /// <summary>The two ends of the battery rule: common practice, no source.</summary>
    public static IReadOnlyList<(double Factor, double Kelvins)> Battery { get; } = [(2, 8), (2, 10)];

    /// <summary>Factor of ageing for a rise of temperature.</summary>
    /// <param name="electronvolts">Activation energy [eV]; above 0.</param>
    /// <param name="celsius">The cooler temperature [°C].</param>
    /// <param name="kelvins">How much warmer [K].</param>
    /// <returns>How many times faster [1].</returns>
    /// <remarks>Source: Arrhenius, exp(Ea/k (1/T1 − 1/T2)), k = 8.617333e-5 eV/K.</remarks>
    public static double Arrhenius(double electronvolts, double celsius, double kelvins)
    {
        Require.Above0(celsius + Air.Zero, "K");
        Require.Above0(celsius + kelvins + Air.Zero, "K");
        return Math.Exp(electronvolts / Boltzmann * (1 / (celsius + Air.Zero) - 1 / (celsius + kelvins + Air.Zero)));
    }

    /// <summary>Mean life over the age at which a tenth is gone, by the shape of the wear.</summary>
    /// <param name="shape">Weibull shape [1]; above 0.</param>
    /// <returns>Mean / L10 [1].</returns>
    /// <remarks>Source: Weibull: Γ(1 + 1/β) / (−ln 0.9)^(1/β); Γ by Lanczos.</remarks>
    public static double MeanOverTenth(double shape)
    {
        Require.Above0(shape, "");
        return Gamma(1 + 1 / shape) / Math.Pow(-Math.Log(0.9), 1 / shape);
    }

    // Lanczos with g = 7 and nine coefficients, good to fifteen digits for the arguments above 1 that occur here.
    private static double Gamma(double x)
    {
        double[] c = [0.99999999999980993, 676.5203681218851, -1259.1392167224028, 771.32342877765313, -176.61502916214059, 12.507343278686905, -0.13857109526572012, 9.9843695780195716e-6, 1.5056327351493116e-7];
        x -= 1;
        var (sum, t) = (c[0], x + 7.5);
        for (var i = 1; i < c.Length; i++)
            sum += c[i] / (x + i);
        return Math.Sqrt(2 * Math.PI) * Math.Pow(t, x + 0.5) * Math.Exp(-t) * sum;
    }
}

namespace Headroom.Engineering.Cabling;

/// <summary>How warm a bundle of powered cables grows: an estimate, fitted to a table from memory, good to about a fifth.</summary>
public static class BundleHeat
{
    /// <summary>Part of the rise that grows with the number of cables [K·m/W]. Source: fitted to <see cref="BundleAmpacity"/>, see docs/cabling.md.</summary>
    public const double PerCable = 0.90787;

    /// <summary>Part of the rise that grows with the root of the number of cables [K·m/W]. Source: as <see cref="PerCable"/>.</summary>
    public const double PerRoot = 10.11206;

    /// <summary>Half the interval of an estimated rise, as a share [1]: the fit is good to 9 % in current. Source: as <see cref="PerCable"/>.</summary>
    public const double Spread = 0.18;

    /// <summary>Most rise within a bundle [K]. Source: TIA TSB-184-A.</summary>
    public const double TargetKelvins = 15;

    /// <summary>Most rise within a bundle in the edition of 2009 [K]. Source: TIA TSB-184.</summary>
    public const double OldTargetKelvins = 10;

    /// <summary>Most cables that are to be tied together. Source: TIA TSB-184-A.</summary>
    public const int MostCables = 24;

    /// <summary>Highest current considered, on all four pairs [A for each pair]. Source: TIA TSB-184-A.</summary>
    public const double MostAmperesPerPair = 1;

    /// <summary>The warmest that a common jacket may become [°C]. Source: common practice, no source; columns of NFPA 70.</summary>
    public const double CommonJacketCelsius = 60;

    /// <summary>By how much the air must be cooler where pairs carry the current of type 2 [K].</summary>
    /// <param name="sharePowered">Share of the pairs that carry it [1]: 1 for all, 0.5 for half.</param>
    /// <returns>10 K for all pairs, 5 K for half, in proportion between.</returns>
    /// <remarks>Source: IEEE Std 802.3, 33.1.4.1, from memory.</remarks>
    public static double TypeTwoDeratingKelvins(double sharePowered) => 10 * Math.Clamp(sharePowered, 0, 1);

    /// <summary>Heat that a metre of one cable makes [W/m].</summary>
    /// <param name="conductors">Conductors that carry current, 4 or 8.</param>
    /// <param name="amperes">Current in each [A]; 0 or more.</param>
    /// <param name="ohmsPerMetre">Resistance of one conductor [Ω/m]; 0 or more.</param>
    /// <returns>Heat [W/m].</returns>
    /// <remarks>Source: circuit theory, I² R.</remarks>
    public static double WattsPerMetre(int conductors, double amperes, double ohmsPerMetre)
    {
        Require.Between(0, 8, conductors);
        Require.AtLeast(0, amperes, "A");
        Require.AtLeast(0, ohmsPerMetre, "Ω/m");
        return conductors * amperes * amperes * ohmsPerMetre;
    }

    /// <summary>Rise at the core of a bundle for each watt a metre of one cable makes [K·m/W].</summary>
    /// <param name="cables">Cables in the bundle, all alike; 1 or more.</param>
    /// <returns>K1 N + K2 √N [K·m/W].</returns>
    public static double Resistance(int cables)
    {
        Require.Between(1, int.MaxValue, cables);
        return PerCable * cables + PerRoot * Math.Sqrt(cables);
    }

    /// <summary>Rise at the core of a bundle [K], with resistance growing as the copper warms.</summary>
    /// <param name="wattsPerMetre">Heat of one cable with copper at 20 °C [W/m]; 0 or more.</param>
    /// <param name="cables">Cables in the bundle, all alike; 1 or more.</param>
    /// <param name="airCelsius">Air around the bundle [°C].</param>
    /// <returns>Rise [K]; null when the estimate runs away: more heat than the bundle can lose at any temperature.</returns>
    /// <remarks>Source: even heat in a cylinder, the form of ISO/IEC TS 29125 and IEC 61156-1-4 (from memory); constants as <see cref="PerCable"/>.</remarks>
    public static double? RiseKelvins(double wattsPerMetre, int cables, double airCelsius)
    {
        Require.AtLeast(0, wattsPerMetre, "W/m");
        var kelvins = wattsPerMetre * Resistance(cables);
        var feedback = Conductor.TemperatureCoefficientPerKelvin * kelvins;
        return feedback >= 1 ? null : kelvins * Conductor.Factor(airCelsius) / (1 - feedback);
    }

    /// <summary>Most cables that keep a rise.</summary>
    /// <param name="wattsPerMetre">Heat of one cable with copper at 20 °C [W/m]; above 0.</param>
    /// <param name="airCelsius">Air around the bundle [°C].</param>
    /// <param name="kelvins">Rise to be kept [K]; above 0.</param>
    /// <returns>Number of cables, a whole number and at least 0.</returns>
    /// <remarks>Source: as <see cref="RiseKelvins"/>, solved for N: a square equation in its root.</remarks>
    public static double CablesKeeping(double wattsPerMetre, double airCelsius, double kelvins)
    {
        Require.Above0(wattsPerMetre, "W/m");
        Require.Above0(kelvins, "K");
        // dT = x f / (1 − a x) with x = p F, so F = dT / (p (f + a dT)); then K1 n² + K2 n = F for n = √N.
        var wanted = kelvins / (wattsPerMetre * (Conductor.Factor(airCelsius) + Conductor.TemperatureCoefficientPerKelvin * kelvins));
        var root = (Math.Sqrt(PerRoot * PerRoot + 4 * PerCable * wanted) - PerRoot) / (2 * PerCable);
        return Math.Floor(root * root + 1e-9);
    }
}

namespace Headroom.Engineering.Cabling;

/// <summary>Most current in a conductor of four-pair cable in bundles, ambient 30 °C. Guidance only: the table is from memory and the code book outranks it.</summary>
public static class BundleAmpacity
{
    /// <summary>Watts for each cable above which the table applies [W]. Source: NFPA 70, 725.144; seen in an article.</summary>
    public const double FromWatts = 60;

    /// <summary>Current that needs no table on 24 AWG and thicker [A]. Source: NFPA 70, 725.144, from memory.</summary>
    public const double FreeAmperes = 0.3;

    private static readonly int[] Upto = [1, 7, 19, 37, 61, 91, 192];
    private static readonly int[] Ratings = [60, 75, 90];

    // By gauge, then by bundle as in Upto, then by rating of the jacket as in Ratings. NFPA 70-2017, Table 725.144, from memory.
    private static double?[][]? TableOf(int awg) => awg switch
    {
        26 => [[1.0, 1.0, 1.0], [1.0, 1.0, 1.0], [0.7, 0.8, 1.0], [0.5, 0.6, 0.7], [0.4, 0.5, 0.6], [0.4, 0.5, 0.6], [null, null, null]],
        24 => [[2.0, 2.0, 2.0], [1.0, 1.4, 1.6], [0.8, 1.0, 1.1], [0.6, 0.7, 0.9], [0.5, 0.6, 0.7], [0.4, 0.5, 0.6], [0.3, 0.4, 0.5]],
        23 => [[2.5, 2.5, 2.5], [1.2, 1.5, 1.7], [0.8, 1.1, 1.2], [0.6, 0.8, 0.9], [0.5, 0.7, 0.8], [0.5, 0.7, 0.8], [0.4, 0.5, 0.6]],
        22 => [[3.0, 3.0, 3.0], [1.4, 1.8, 2.1], [1.0, 1.2, 1.4], [0.7, 0.9, 1.1], [0.6, 0.8, 0.9], [0.6, 0.8, 0.9], [0.5, 0.6, 0.7]],
        _ => null,
    };

    /// <summary>Most current in one conductor [A].</summary>
    /// <param name="awg">Gauge [AWG]; one between two is counted as the thinner.</param>
    /// <param name="cables">Cables in the bundle; 1 or more.</param>
    /// <param name="jacketCelsius">The warmest the jacket may become [°C]; one between two columns is counted as the cooler.</param>
    /// <returns>Current [A]; null where the table has none.</returns>
    /// <remarks>Source: NFPA 70-2017, Table 725.144, from memory.</remarks>
    public static double? MostAmperes(double awg, int cables, double jacketCelsius)
    {
        var gauge = awg <= 22.25 ? 22 : awg <= 23.25 ? 23 : awg <= 24.25 ? 24 : awg <= 26.25 ? 26 : 0;
        var column = Array.FindLastIndex(Ratings, rating => rating <= jacketCelsius + 1e-9);
        var bundle = Array.FindIndex(Upto, most => cables <= most);
        return column < 0 || bundle < 0 ? null : TableOf(gauge)?[bundle][column];
    }

    /// <summary>Says whether the table is to be asked.</summary>
    /// <param name="cableWatts">Watts on the cable [W].</param>
    /// <param name="amperes">Current in one conductor [A].</param>
    /// <param name="awg">Gauge [AWG].</param>
    /// <returns>True above 60 W, unless the current is at most 0.3 A on 24 AWG or thicker.</returns>
    /// <remarks>Source: NFPA 70, 725.144, from memory; the 60 W seen in an article.</remarks>
    public static bool Applies(double cableWatts, double amperes, double awg) =>
        cableWatts > FromWatts && !(amperes <= FreeAmperes + 1e-9 && awg <= 24.25);
}

namespace Headroom.Engineering.Acoustics;

/// <summary>The eight octave bands from 63 Hz to 8 kHz, and levels made of them.</summary>
public static class Octaves
{
    /// <summary>How many bands there are.</summary>
    public const int Count = 8;

    // Worked out once when somebody asks. The standard prints the weights to a tenth (IEC 61672-1:2013, table 3): those are the design goals.
    private static double[]? _a;
    private static double[]? _c;

    /// <summary>Middle frequencies [Hz], exact (IEC 61260-1).</summary>
    public static ReadOnlySpan<double> Hertz => [63.095734448, 125.892541179, 251.188643151, 501.187233627, 1000, 1995.262314969, 3981.071705535, 7943.282347243];

    /// <summary>The bands as people name them.</summary>
    public static IReadOnlyList<string> Names { get; } = ["63", "125", "250", "500", "1k", "2k", "4k", "8k"];

    /// <summary>A weights of the bands [dB].</summary>
    public static IReadOnlyList<double> AWeights => _a ??= [.. Enumerable.Range(0, Count).Select(band => Math.Round(Weighting.A(Hertz[band]), 1))];

    /// <summary>C weights of the bands [dB].</summary>
    public static IReadOnlyList<double> CWeights => _c ??= [.. Enumerable.Range(0, Count).Select(band => Math.Round(Weighting.C(Hertz[band]), 1))];

    /// <summary>A weight of the octave of 31.5 Hz [dB], which rating curves have besides.</summary>
    internal static double LowestWeight => Math.Round(Weighting.A(Weighting.Exact(-15)), 1);

    /// <summary>Unweighted level of a spectrum.</summary>
    /// <param name="bands">Its eight band levels [dB].</param>
    /// <returns>The level [dB].</returns>
    /// <remarks>Source: energy sum over the bands.</remarks>
    public static double LevelZ(IReadOnlyList<double> bands) => Sum(bands, _ => 0);

    /// <summary>A-weighted level of a spectrum.</summary>
    /// <param name="bands">Its eight band levels, unweighted [dB].</param>
    /// <returns>The level [dB(A)].</returns>
    /// <remarks>Source: energy sum over the bands with the weights of IEC 61672-1.</remarks>
    public static double LevelA(IReadOnlyList<double> bands) => Sum(bands, band => AWeights[band]);

    /// <summary>C-weighted level of a spectrum.</summary>
    /// <param name="bands">Its eight band levels, unweighted [dB].</param>
    /// <returns>The level [dB(C)].</returns>
    /// <remarks>Source: energy sum over the bands with the weights of IEC 61672-1.</remarks>
    public static double LevelC(IReadOnlyList<double> bands) => Sum(bands, band => CWeights[band]);

    /// <summary>Speech interference level of a spectrum.</summary>
    /// <param name="bands">Its eight band levels, unweighted [dB].</param>
    /// <returns>Mean of the bands of 500, 1000, 2000 and 4000 Hz [dB].</returns>
    /// <remarks>Source: ISO/TR 3352 and ANSI/ASA S12.2, from memory.</remarks>
    public static double SpeechInterference(IReadOnlyList<double> bands) => (bands[3] + bands[4] + bands[5] + bands[6]) / 4;

    private static double Sum(IReadOnlyList<double> bands, Func<int, double> weight)
    {
        Require.Between(Count, Count, bands.Count);
        var energy = 0.0;
        for (var band = 0; band < Count; band++)
            energy += Levels.Energy(bands[band] + weight(band));
        return 10 * Math.Log10(energy);
    }
}

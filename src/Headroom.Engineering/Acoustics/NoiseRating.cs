namespace Headroom.Engineering.Acoustics;

/// <summary>Noise rating curves NR: L = a + b NR. Withdrawn from ISO 1996, still used by building services.</summary>
public static class NoiseRating
{
    /// <summary>How many octave bands the curves have, from 31.5 Hz to 8 kHz.</summary>
    public const int Bands = 9;

    /// <summary>Offsets a of the bands [dB].</summary>
    public static ReadOnlySpan<double> Offsets => [55.4, 35.4, 22.0, 12.0, 4.8, 0.0, -3.5, -6.1, -8.0];

    /// <summary>Slopes b of the bands [1].</summary>
    public static ReadOnlySpan<double> Slopes => [0.681, 0.790, 0.870, 0.930, 0.974, 1.000, 1.015, 1.025, 1.030];

    /// <summary>Level of a curve in a band.</summary>
    /// <param name="rating">The curve's number [NR].</param>
    /// <param name="band">The band, 0 for 31.5 Hz to 8 for 8 kHz.</param>
    /// <returns>The level [dB].</returns>
    /// <remarks>Source: ISO/R 1996:1971 (Kosten and van Os).</remarks>
    public static double Curve(double rating, int band)
    {
        Require.Between(0, Bands - 1, band);
        return Offsets[band] + Slopes[band] * rating;
    }

    /// <summary>Rating of a spectrum: the highest curve that one of its bands reaches.</summary>
    /// <param name="bands">Levels of the octaves from 63 Hz to 8 kHz [dB].</param>
    /// <returns>The rating [NR] and the band, 0 for 63 Hz, that sets it.</returns>
    /// <remarks>Source: ISO/R 1996:1971; NR of a band = (L − a) / b.</remarks>
    public static (double Rating, int Band) Of(IReadOnlyList<double> bands)
    {
        var (rating, governs) = (double.NegativeInfinity, 0);
        for (var band = 0; band < Octaves.Count; band++)
        {
            var of = (bands[band] - Offsets[band + 1]) / Slopes[band + 1];
            if (of > rating)
                (rating, governs) = (of, band);
        }

        return (rating, governs);
    }

    /// <summary>A-weighted level of a curve as a spectrum.</summary>
    /// <param name="rating">The curve's number [NR].</param>
    /// <returns>The level [dB(A)], over 31.5 Hz to 8 kHz.</returns>
    /// <remarks>Source: ISO/R 1996:1971 and IEC 61672-1.</remarks>
    public static double LevelA(double rating)
    {
        var energy = Levels.Energy(Curve(rating, 0) + Octaves.LowestWeight);
        for (var band = 0; band < Octaves.Count; band++)
            energy += Levels.Energy(Curve(rating, band + 1) + Octaves.AWeights[band]);
        return 10 * Math.Log10(energy);
    }
}

namespace Headroom.Engineering.Acoustics;

/// <summary>Noise criterion rating NC of a spectrum.</summary>
public static class NoiseCriterion
{
    private const int Step = 5;

    /// <summary>Rating by tangency: in each band the curve that the level reaches, and of those the highest.</summary>
    /// <param name="bands">Levels of the octaves from 63 Hz to 8 kHz [dB].</param>
    /// <param name="older">True for the older table in wide use.</param>
    /// <returns>The rating [NC] and the band, 0 for 63 Hz, that sets it; curves are drawn on beyond NC-15 and NC-60.</returns>
    /// <remarks>Source: ANSI/ASA S12.2-2019, table 1 and 5.2, second-hand; linear between curves.</remarks>
    public static (double Rating, int Band) Of(IReadOnlyList<double> bands, bool older = false)
    {
        var (rating, governs) = (double.NegativeInfinity, 0);
        for (var band = 0; band < Octaves.Count; band++)
        {
            var of = InBand(bands[band], band + 2, older);
            if (of > rating)
                (rating, governs) = (of, band);
        }

        return (rating, governs);
    }

    /// <summary>A-weighted level of a curve as a spectrum.</summary>
    /// <param name="curve">The curve, 0 for NC-15.</param>
    /// <returns>The level [dB(A)], over 31.5 Hz to 8 kHz.</returns>
    /// <remarks>Source: ANSI/ASA S12.2-2019, table 1, second-hand, and IEC 61672-1.</remarks>
    public static double LevelA(int curve)
    {
        var energy = Levels.Energy(NoiseCriterionTable.Level(curve, 1) + Octaves.LowestWeight);
        for (var band = 0; band < Octaves.Count; band++)
            energy += Levels.Energy(NoiseCriterionTable.Level(curve, band + 2) + Octaves.AWeights[band]);
        return 10 * Math.Log10(energy);
    }

    private static double InBand(double level, int band, bool older)
    {
        var upper = 1;
        while (upper < NoiseCriterionTable.Count - 1 && NoiseCriterionTable.Level(upper, band, older) < level)
            upper++;
        double low = NoiseCriterionTable.Level(upper - 1, band, older);
        double high = NoiseCriterionTable.Level(upper, band, older);
        return NoiseCriterionTable.Lowest + Step * (upper - 1 + (level - low) / (high - low));
    }
}

namespace Headroom.Engineering.Acoustics;

/// <summary>The noise criterion curves NC as printed, from NC-15 in steps of 5.</summary>
public static class NoiseCriterionTable
{
    /// <summary>Number of the lowest curve.</summary>
    public const int Lowest = 15;

    /// <summary>How many curves there are, up to NC-60.</summary>
    public const int Count = 10;

    /// <summary>How many octave bands each has, from 16 Hz to 8 kHz.</summary>
    public const int Bands = 10;

    // ANSI/ASA S12.2-2019, table 1, second-hand.
    private static ReadOnlySpan<byte> Current =>
    [
        78, 61, 47, 36, 28, 22, 18, 14, 12, 11,
        79, 63, 50, 40, 33, 26, 22, 20, 17, 16,
        80, 65, 54, 44, 37, 31, 27, 24, 22, 22,
        81, 68, 57, 48, 41, 35, 32, 29, 28, 27,
        82, 71, 60, 52, 45, 40, 36, 34, 33, 32,
        84, 74, 64, 56, 50, 44, 41, 39, 38, 37,
        85, 76, 67, 60, 54, 49, 46, 44, 43, 42,
        87, 79, 71, 64, 58, 54, 51, 49, 48, 47,
        89, 82, 74, 67, 62, 58, 56, 54, 53, 52,
        90, 85, 77, 71, 66, 63, 60, 59, 58, 57,
    ];

    /// <summary>Level of a curve in a band.</summary>
    /// <param name="curve">The curve, 0 for NC-15.</param>
    /// <param name="band">The band, 0 for 16 Hz to 9 for 8 kHz.</param>
    /// <param name="older">True for the older table in wide use, which differs by 1 dB in eight cells and has no bands below 63 Hz.</param>
    /// <returns>The level [dB].</returns>
    public static int Level(int curve, int band, bool older = false)
    {
        Require.Between(0, Count - 1, curve);
        Require.Between(0, Bands - 1, band);
        return Current[curve * Bands + band] + (older ? Older(Lowest + 5 * curve, band) : 0);
    }

    private static int Older(int curve, int band) => (curve, band) switch
    {
        (15, 4) or (20, 2) => 1,
        (15, 6) or (20, 7) or (25, 9) or (30, 6) => -1,
        (40, 5) or (60, 4) or (60, 6) => 1,
        _ => 0,
    };
}

namespace Headroom.Engineering.Power;

/// <summary>The two loop resistances of a twisted-pair cable. They differ by a factor of two or four; do not mix them.</summary>
public static class PairLoop
{
    /// <summary>Resistance of the powering circuit, out and back [Ω]: what carries the current of a powered device.</summary>
    /// <param name="ohmsPerMetre">Resistance of one conductor [Ω/m]; 0 or more.</param>
    /// <param name="metres">Length of the cable [m]; 0 or more.</param>
    /// <param name="pairs">Pairs that carry power: 2 (two conductors each way) or 4 (four each way).</param>
    /// <returns>Loop resistance [Ω]: r L on two pairs, r L / 2 on four.</returns>
    /// <remarks>Source: circuit theory, equal conductors in parallel.</remarks>
    public static double PowerLoopOhms(double ohmsPerMetre, double metres, int pairs)
    {
        Require.AtLeast(0, ohmsPerMetre, "Ω/m");
        Require.AtLeast(0, metres, "m");
        if (pairs is not (2 or 4))
            throw new ArgumentOutOfRangeException(nameof(pairs), pairs, FormattableString.Invariant($"pairs is {pairs}; power runs on 2 or 4 pairs."));
        return 2 * ohmsPerMetre * metres / pairs;
    }

    /// <summary>Resistance of one pair shorted at the far end [Ω]: what a field tester shows, and what the 25 Ω channel limit is about.</summary>
    /// <param name="ohmsPerMetre">Resistance of one conductor [Ω/m]; 0 or more.</param>
    /// <param name="metres">Length of the cable [m]; 0 or more.</param>
    /// <returns>Loop resistance of the pair [Ω], 2 r L.</returns>
    /// <remarks>Source: circuit theory.</remarks>
    public static double PairLoopOhms(double ohmsPerMetre, double metres)
    {
        Require.AtLeast(0, ohmsPerMetre, "Ω/m");
        Require.AtLeast(0, metres, "m");
        return 2 * ohmsPerMetre * metres;
    }
}

namespace Headroom.Engineering.Cabling;

/// <summary>How unlike the conductors of a pair, or the pairs of a cable, may be.</summary>
public static class Unbalance
{
    /// <summary>Most within a pair of cable, as a share of the loop [1]. Source: ANSI/TIA-568.2-D, from memory.</summary>
    public const double CableShare = 0.05;

    /// <summary>Most within a pair of a channel, as a share of the loop [1]. Source: ANSI/TIA-568.2-D and IEEE 802.3 33.1.4.2, from memory.</summary>
    public const double WithinShare = 0.03;

    /// <summary>What is allowed within a pair of a channel however short [Ω]. Source: as <see cref="WithinShare"/>.</summary>
    public const double WithinOhms = 0.2;

    /// <summary>Most between two pairs of a channel, as a share of both together [1]. Source: ISO/IEC 11801-1 and ANSI/TIA-568.2-D, from memory.</summary>
    public const double BetweenShare = 0.07;

    /// <summary>What is allowed between two pairs of a channel however short [Ω]. Source: as <see cref="BetweenShare"/>.</summary>
    public const double BetweenOhms = 0.05;

    /// <summary>Most difference between the two conductors of a pair [Ω].</summary>
    /// <param name="loopOhms">The pair out and back [Ω]; 0 or more.</param>
    /// <returns>3 % of the loop or 0.2 Ω, whichever is larger [Ω].</returns>
    /// <remarks>Source: ANSI/TIA-568.2-D and IEEE 802.3 33.1.4.2, from memory.</remarks>
    public static double WithinLimitOhms(double loopOhms)
    {
        Require.AtLeast(0, loopOhms, "Ω");
        return Math.Max(WithinOhms, WithinShare * loopOhms);
    }

    /// <summary>Resistance of the two conductors of a pair side by side, one way [Ω]: what the current of a powered pair meets.</summary>
    /// <param name="loopOhms">The pair out and back [Ω]; 0 or more.</param>
    /// <returns>A quarter of the loop [Ω].</returns>
    /// <remarks>Source: circuit theory, two equal conductors in parallel.</remarks>
    public static double SideBySideOhms(double loopOhms)
    {
        Require.AtLeast(0, loopOhms, "Ω");
        return loopOhms / 4;
    }

    /// <summary>Most difference between two pairs, each with its conductors side by side [Ω].</summary>
    /// <param name="oneOhms">One pair side by side [Ω]; 0 or more.</param>
    /// <param name="otherOhms">The other pair side by side [Ω]; 0 or more.</param>
    /// <returns>7 % of both together or 0.05 Ω, whichever is larger [Ω].</returns>
    /// <remarks>Source: ISO/IEC 11801-1 and ANSI/TIA-568.2-D, from memory.</remarks>
    public static double BetweenLimitOhms(double oneOhms, double otherOhms)
    {
        Require.AtLeast(0, oneOhms, "Ω");
        Require.AtLeast(0, otherOhms, "Ω");
        return Math.Max(BetweenOhms, BetweenShare * (oneOhms + otherOhms));
    }
}

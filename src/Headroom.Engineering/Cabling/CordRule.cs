namespace Headroom.Engineering.Cabling;

/// <summary>How long the cords of a channel may be beside a link of a given length.</summary>
public static class CordRule
{
    /// <summary>The whole of a channel in metres of horizontal cable [m]: 90 m of link and 10 m of cords that lose a fifth more. Source: ANSI/TIA-568, work-area formula, from memory.</summary>
    public const double WholeMetres = 102;

    /// <summary>Most length of all cords of 28 AWG together [m]. Source: ANSI/TIA-568.2-D, from memory.</summary>
    public const double ThinMetres = 15;

    /// <summary>Most length of the cord at the outlet end [m]. Source: ANSI/TIA-568, open office.</summary>
    public const double OutletEndMetres = 22;

    /// <summary>What a stranded cord loses more than horizontal cable, as a share [1].</summary>
    /// <param name="squareMillimetres">Cross-section of one conductor [mm²]; above 0.</param>
    /// <returns>0.2 for 24 AWG and thicker, 0.5 for 26 AWG, 0.95 for 28 AWG; null for thinner ones, which the standards do not allow.</returns>
    /// <remarks>Source: ANSI/TIA-568 work-area formula and 568.2-D annex, from memory; the results for 28 AWG agree with two published examples.</remarks>
    public static double? Derating(double squareMillimetres) =>
        ChannelLimits.IsThickEnough(squareMillimetres, ChannelLimits.ThinnestLinkAwg) ? 0.2
        : ChannelLimits.IsThickEnough(squareMillimetres, ChannelLimits.ThinnestPlainCordAwg) ? 0.5
        : ChannelLimits.IsThickEnough(squareMillimetres, ChannelLimits.ThinnestCordAwg) ? 0.95
        : null;

    /// <summary>Longest cords together [m].</summary>
    /// <param name="linkMetres">The link, as the length at 20 °C that loses as much [m]; 0 or more.</param>
    /// <param name="derating">What the cords lose more than horizontal cable [1]; 0 or more.</param>
    /// <returns>C = (102 − H) / (1 + D) [m]; null when the link alone takes all.</returns>
    /// <remarks>Source: ANSI/TIA-568 work-area formula, from memory.</remarks>
    public static double? LongestMetres(double linkMetres, double derating)
    {
        Require.AtLeast(0, linkMetres, "m");
        Require.AtLeast(0, derating, "(a share)");
        return linkMetres > WholeMetres ? null : (WholeMetres - linkMetres) / (1 + derating);
    }
}

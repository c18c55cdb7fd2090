namespace Headroom.Engineering.Cabling;

/// <summary>What the cabling standards allow a run of four-pair copper: lengths, resistances, gauges.</summary>
public static class ChannelLimits
{
    /// <summary>Most length of a permanent link, panel to outlet, at 20 °C [m]. Source: ANSI/TIA-568.2-D and ISO/IEC 11801-1.</summary>
    public const double LinkMetres = 90;

    /// <summary>Most length of a channel, cords of 22 to 24 AWG included, at 20 °C [m]. Source: ANSI/TIA-568.2-D and ISO/IEC 11801-1.</summary>
    public const double ChannelMetres = 100;

    /// <summary>Most resistance of a pair out and back, permanent link at 20 °C [Ω]. Source: ANSI/TIA-568.2-D.</summary>
    public const double LinkLoopOhms = 21;

    /// <summary>Most resistance of a pair out and back, channel at 20 °C [Ω]. Source: ANSI/TIA-568.2-D.</summary>
    public const double ChannelLoopOhms = 25;

    /// <summary>Most resistance of one conductor of horizontal cable at 20 °C [Ω/100 m]. Source: ANSI/TIA-568.2-D (ASTM D4566), from memory.</summary>
    public const double CableOhmsPerHundredMetres = 9.38;

    /// <summary>Most resistance of one conductor of a cord of 24 to 26 AWG at 20 °C [Ω/100 m]. Source: ANSI/TIA-568.2-D, from memory.</summary>
    public const double CordOhmsPerHundredMetres = 14;

    /// <summary>The thickest conductor of horizontal cable and of cords [AWG]. Source: ANSI/TIA-568.2-D.</summary>
    public const double ThickestAwg = 22;

    /// <summary>The thinnest conductor of horizontal cable [AWG]. Source: ANSI/TIA-568.2-D.</summary>
    public const double ThinnestLinkAwg = 24;

    /// <summary>The thinnest conductor of a cord that is not de-rated [AWG]. Source: ANSI/TIA-568.2-D.</summary>
    public const double ThinnestPlainCordAwg = 26;

    /// <summary>The thinnest conductor of any cord, de-rated [AWG]. Source: ANSI/TIA-568.2-D.</summary>
    public const double ThinnestCordAwg = 28;

    // Metric cross-sections are rounded: 0.2 mm² is sold as 24 AWG and is 24.1.
    private const double GaugeSlack = 0.25;

    /// <summary>Resistance of one pair out and back [Ω], as a field tester shows it.</summary>
    /// <param name="conductorOhms">Resistance of one conductor from end to end [Ω]; 0 or more.</param>
    /// <returns>Twice that of the conductor [Ω].</returns>
    /// <remarks>Source: circuit theory, two conductors in series.</remarks>
    public static double PairLoopOhms(double conductorOhms)
    {
        Require.AtLeast(0, conductorOhms, "Ω");
        return 2 * conductorOhms;
    }

    /// <summary>Says whether a conductor is thick enough.</summary>
    /// <param name="squareMillimetres">Cross-section of the metal [mm²]; above 0.</param>
    /// <param name="thinnestAwg">The thinnest gauge allowed [AWG].</param>
    /// <returns>True when it is that gauge or thicker; a quarter of a gauge is let pass for rounded metric sizes.</returns>
    /// <remarks>Source: ASTM B258 for the gauge, from memory.</remarks>
    public static bool IsThickEnough(double squareMillimetres, double thinnestAwg) =>
        Conductor.Awg(squareMillimetres) <= thinnestAwg + GaugeSlack;
}

namespace Headroom.Engineering.Acoustics;

/// <summary>How the ear, as instruments copy it, weighs frequencies.</summary>
public static class Weighting
{
    // Pole frequencies [Hz], IEC 61672-1:2013, annex E.
    private const double F1 = 20.598997;
    private const double F2 = 107.65265;
    private const double F3 = 737.86223;
    private const double F4 = 12194.217;

    /// <summary>Exact frequency behind a nominal one.</summary>
    /// <param name="thirds">How many third octaves above 1 kHz; negative below.</param>
    /// <returns>The frequency [Hz].</returns>
    /// <remarks>Source: IEC 61260-1, base ten: 1000 · 10^(k/10).</remarks>
    public static double Exact(int thirds) => 1000 * Math.Pow(10, thirds / 10.0);

    /// <summary>A weighting.</summary>
    /// <param name="hertz">The exact frequency [Hz]; above 0.</param>
    /// <returns>The weight [dB].</returns>
    /// <remarks>Source: IEC 61672-1:2013, annex E.</remarks>
    public static double A(double hertz)
    {
        Require.Above0(hertz, "Hz");
        var f = hertz * hertz;
        return 20 * Math.Log10(F4 * F4 * f * f / ((f + F1 * F1) * Math.Sqrt((f + F2 * F2) * (f + F3 * F3)) * (f + F4 * F4))) + 2.000;
    }

    /// <summary>C weighting.</summary>
    /// <param name="hertz">The exact frequency [Hz]; above 0.</param>
    /// <returns>The weight [dB].</returns>
    /// <remarks>Source: IEC 61672-1:2013, annex E.</remarks>
    public static double C(double hertz)
    {
        Require.Above0(hertz, "Hz");
        var f = hertz * hertz;
        return 20 * Math.Log10(F4 * F4 * f / ((f + F1 * F1) * (f + F4 * F4))) + 0.062;
    }
}

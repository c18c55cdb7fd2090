namespace Headroom.Engineering.Acoustics;

/// <summary>Sound that has to go round an edge. All formulas are of the open, with source and ear far from the edge; a desk is neither, so they say no more than 5 dB either way.</summary>
public static class EdgeDiffraction
{
    /// <summary>Speed of sound at 20 °C [m/s].</summary>
    public const double SoundSpeed = 343;

    /// <summary>The most a single edge is believed to take away [dB]: ISO 9613-2:1996, 7.4.</summary>
    public const double MostLoss = 20;

    /// <summary>By how much the way round the edge is longer than the straight one.</summary>
    /// <param name="toEdge">From source to edge [m].</param>
    /// <param name="fromEdge">From edge to ear [m].</param>
    /// <param name="straight">From source to ear [m].</param>
    /// <returns>The difference [m].</returns>
    /// <remarks>Source: geometry; ISO 9613-2:1996, 7.4.</remarks>
    public static double PathDifference(double toEdge, double fromEdge, double straight) => toEdge + fromEdge - straight;

    /// <summary>The Fresnel number of an edge.</summary>
    /// <param name="difference">The path difference [m]; negative where the edge does not stand in the way.</param>
    /// <param name="hertz">The frequency [Hz].</param>
    /// <returns>N = 2 δ f / c [1].</returns>
    /// <remarks>Source: Maekawa 1968.</remarks>
    public static double Fresnel(double difference, double hertz) => 2 * difference * hertz / SoundSpeed;

    /// <summary>Loss by Kurze and Anderson.</summary>
    /// <param name="fresnel">N [1]; 0 or more.</param>
    /// <returns>The loss [dB]; 5 dB where the edge just touches the straight way.</returns>
    /// <remarks>Source: Kurze and Anderson 1971, 5 + 20 lg(√(2πN) / tanh √(2πN)).</remarks>
    public static double KurzeAnderson(double fresnel)
    {
        Require.AtLeast(0, fresnel, "");
        var x = Math.Sqrt(2 * Math.PI * fresnel);
        return 5 + (x < 1e-6 ? 0 : 20 * Math.Log10(x / Math.Tanh(x)));
    }

    /// <summary>Loss by the fit to Maekawa's chart.</summary>
    /// <param name="fresnel">N [1]; 0 or more.</param>
    /// <returns>The loss [dB].</returns>
    /// <remarks>Source: 10 lg(3 + 20 N), from memory.</remarks>
    public static double Maekawa(double fresnel)
    {
        Require.AtLeast(0, fresnel, "");
        return 10 * Math.Log10(3 + 20 * fresnel);
    }

    /// <summary>Loss by the standard for sound outdoors, indoors without its term for weather; the least of the three, and the one that the study uses.</summary>
    /// <param name="fresnel">N [1]; negative where the edge does not stand in the way: then it falls to nothing at −0.2.</param>
    /// <returns>The loss [dB], at most 20.</returns>
    /// <remarks>Source: ISO 9613-2:1996, 7.4: 10 lg(3 + (C2/λ) C3 z K) with C2 = 20, C3 = 1, K = 1, so 10 lg(3 + 10 N).</remarks>
    public static double Standard(double fresnel) => -10 * Math.Log10(StandardShare(fresnel));

    /// <summary>What is left of the energy by the same rule.</summary>
    /// <param name="fresnel">N [1].</param>
    /// <returns>The share [1], 0.01 to 1.</returns>
    /// <remarks>Source: ISO 9613-2:1996, 7.4.</remarks>
    public static double StandardShare(double fresnel) => 1 / Math.Clamp(3 + 10 * fresnel, 1, 100);
}

namespace Headroom.Engineering.Acoustics;

/// <summary>Sums and differences of levels. Levels are logarithms: what adds up is the energy behind them. 0 dB is a level like any other, not silence.</summary>
public static class Levels
{
    /// <summary>Energy of a level relative to that of 0 dB.</summary>
    /// <param name="dB">The level [dB].</param>
    /// <returns>The energy [1].</returns>
    /// <remarks>Source: definition of the decibel, ISO 80000-8.</remarks>
    public static double Energy(double dB) => Math.Pow(10, dB / 10);

    /// <summary>Level of an energy relative to that of 0 dB.</summary>
    /// <param name="energy">The energy [1]; 0 or more.</param>
    /// <returns>The level [dB]; null when there is no energy at all.</returns>
    /// <remarks>Source: definition of the decibel, ISO 80000-8.</remarks>
    public static double? Of(double energy) => energy > 0 ? 10 * Math.Log10(energy) : null;

    /// <summary>Level of several sources together that have nothing to do with one another.</summary>
    /// <param name="levels">Their levels at one place [dB].</param>
    /// <returns>The level [dB]; null when there is none, which is silence and not 0 dB.</returns>
    /// <remarks>Source: incoherent sum, ISO 3744:2010, annex F; 10 lg Σ 10^(L/10).</remarks>
    public static double? Together(params IReadOnlyList<double> levels)
    {
        var energy = 0.0;
        for (var i = 0; i < levels.Count; i++)
            energy += Energy(levels[i]);
        return Of(energy);
    }

    /// <summary>Level of several like sources together.</summary>
    /// <param name="dB">The level of one [dB].</param>
    /// <param name="count">How many there are; 1 or more.</param>
    /// <returns>The level [dB].</returns>
    /// <remarks>Source: incoherent sum of equal levels, L + 10 lg N.</remarks>
    public static double OfLike(double dB, int count)
    {
        Require.Between(1, int.MaxValue, count);
        return dB + 10 * Math.Log10(count);
    }

    /// <summary>By how much one level rises when another comes to it.</summary>
    /// <param name="dB">The level [dB].</param>
    /// <param name="other">The level that comes to it [dB].</param>
    /// <returns>The rise [dB], above 0.</returns>
    /// <remarks>Source: incoherent sum, 10 lg(1 + 10^((L2 − L1)/10)).</remarks>
    public static double Rise(double dB, double other) => 10 * Math.Log10(1 + Energy(other - dB));

    /// <summary>Level of the mean energy of several readings of one steady source.</summary>
    /// <param name="levels">The readings [dB]; one or more.</param>
    /// <returns>The level [dB]; null when there is no reading.</returns>
    /// <remarks>Source: energy mean, ISO 9612:2009, formula (7).</remarks>
    public static double? Mean(IReadOnlyList<double> levels) =>
        Together(levels) is { } sum ? sum - 10 * Math.Log10(levels.Count) : null;
}

namespace Headroom.Engineering.Acoustics;

/// <summary>Puts two figures of one thing together, each weighed by how well it is known.</summary>
public static class Precision
{
    /// <summary>The most that two figures may lie apart to be combined, in joint standard uncertainties: common practice.</summary>
    public const double MostToCombine = 2;

    /// <summary>Beyond this they contradict each other, in joint standard uncertainties: rule of this program.</summary>
    public const double MostDoubtful = 3;

    /// <summary>Uncertainties that have nothing to do with one another, together.</summary>
    /// <param name="uncertainties">The standard uncertainties [dB].</param>
    /// <returns>Root of the sum of squares [dB].</returns>
    /// <remarks>Source: ISO/IEC Guide 98-3, 5.1.2.</remarks>
    public static double RootSum(params ReadOnlySpan<double> uncertainties)
    {
        var sum = 0.0;
        foreach (var u in uncertainties)
            sum += u * u;
        return Math.Sqrt(sum);
    }

    /// <summary>Half a limit within which every value is as likely as any other, as a standard uncertainty.</summary>
    /// <param name="half">Half the width of the limit [dB].</param>
    /// <returns>The standard uncertainty [dB].</returns>
    /// <remarks>Source: ISO/IEC Guide 98-3, 4.3.7: a / √3.</remarks>
    public static double Rectangular(double half) => half / Math.Sqrt(3);

    /// <summary>How far two figures lie apart, in joint standard uncertainties.</summary>
    /// <param name="first">The first, such as the prediction [dB].</param>
    /// <param name="second">The second, such as the reading [dB].</param>
    /// <returns>z [1], positive when the second is higher.</returns>
    /// <remarks>Source: (m2 − m1) / √(u1² + u2²), ISO/IEC Guide 98-3; as E_n with k = 2 it is half of it (ISO/IEC 17043, from memory).</remarks>
    public static double Apart(Estimate first, Estimate second) =>
        (second.Value - first.Value) / RootSum(first.Uncertainty, second.Uncertainty);

    /// <summary>What is to be done with two figures of one thing.</summary>
    /// <param name="apart">How far they lie apart [1], in joint standard uncertainties.</param>
    /// <returns>Whether they are combined, kept side by side, or contradict each other.</returns>
    /// <remarks>Source: 2 is common practice (5 % at 1.96); 3 is a rule of this program (0.27 %).</remarks>
    public static Agreement Judge(double apart) => Math.Abs(apart) switch
    {
        <= MostToCombine => Agreement.Agree,
        <= MostDoubtful => Agreement.Doubtful,
        _ => Agreement.Contradict,
    };

    /// <summary>Two figures weighed by their precisions.</summary>
    /// <param name="first">The first [dB].</param>
    /// <param name="second">The second [dB].</param>
    /// <returns>The combined figure [dB]; whether they may be combined is for <see cref="Judge"/> to say.</returns>
    /// <remarks>Source: weights 1/u²; ISO/IEC Guide 98-3, and any text on least squares.</remarks>
    public static Estimate Combine(Estimate first, Estimate second)
    {
        var (w1, w2) = (Weight(first), Weight(second));
        return new((w1 * first.Value + w2 * second.Value) / (w1 + w2), 1 / Math.Sqrt(w1 + w2));
    }

    /// <summary>Readings of one instrument: what they err alike is added once.</summary>
    /// <param name="readings">The readings, each with the part of its uncertainty that it has for itself; one or more.</param>
    /// <param name="common">The uncertainty that all share [dB].</param>
    /// <returns>The combined reading [dB].</returns>
    /// <remarks>Source: weights 1/u² of the own parts; the common part passes unchanged (ISO/IEC Guide 98-3, 5.2).</remarks>
    public static Estimate OfOneInstrument(IReadOnlyList<Estimate> readings, double common)
    {
        var all = readings[0];
        for (var i = 1; i < readings.Count; i++)
            all = Combine(all, readings[i]);
        return all with { Uncertainty = RootSum(all.Uncertainty, common) };
    }

    private static double Weight(Estimate estimate) => 1 / (estimate.Uncertainty * estimate.Uncertainty);
}

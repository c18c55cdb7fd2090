using MathNet.Numerics;
using MathNet.Numerics.Distributions;

namespace Headroom.Engineering.Reliability;

/// <summary>Failure rates from hours in the field: the belief (Gamma and Poisson), and the classical interval beside it.</summary>
public static class FieldRate
{
    /// <summary>How much of a catalogue's time between failures is believed [1]: it is optimistic; common practice, no source (0.3 to 1).</summary>
    public const double BelievedShare = 0.5;

    /// <summary>Time between failures with its classical interval.</summary>
    /// <param name="hours">Hours in service of all units together [h]; above 0.</param>
    /// <param name="failures">Failures in them; 0 or more.</param>
    /// <param name="confidence">Confidence of the interval [1]; above 0, below 1.</param>
    /// <returns>T / r and its limits; without failures the low end alone, at one-sided confidence (1 + confidence) / 2.</returns>
    /// <remarks>Source: 2T / χ²; NIST/SEMATECH e-Handbook 8.4.5.1. Exact where watching ends at a time and failed units are replaced.</remarks>
    public static RateRange Classical(double hours, int failures, double confidence)
    {
        Require.Above0(hours, "h");
        Require.Between(0, int.MaxValue - 1, failures);
        var tail = (1 - Below1(confidence)) / 2;
        var least = 2 * hours / ChiSquared.InvCDF(2 * failures + 2, 1 - tail);
        return failures == 0 ? new(null, least, null) : new(hours / failures, least, 2 * hours / ChiSquared.InvCDF(2 * failures, tail));
    }

    /// <summary>The belief before anything was seen, from a catalogue's time between failures.</summary>
    /// <param name="catalogueHours">The catalogue's figure [h]; above 0.</param>
    /// <param name="believedShare">How much of it is believed [1]; above 0, at most 1.</param>
    /// <returns>Worth one failure in so many hours.</returns>
    /// <remarks>Source: a weak prior of one failure, NIST/SEMATECH e-Handbook 8.3.1.5; the share is common practice, no source.</remarks>
    public static RateBelief FromCatalogue(double catalogueHours, double believedShare = BelievedShare)
    {
        Require.Above0(catalogueHours, "h");
        Require.Share(believedShare);
        return new(1, catalogueHours * believedShare);
    }

    /// <summary>The belief of somebody who knows nothing: half a failure in no time.</summary>
    /// <param name="failures">Failures seen; 0 or more.</param>
    /// <param name="hours">Hours in service of all units together [h]; above 0.</param>
    /// <returns>The belief after they were seen.</returns>
    /// <remarks>Source: Jeffreys' prior for a Poisson rate, from memory.</remarks>
    public static RateBelief FromNothing(int failures, double hours)
    {
        Require.Between(0, int.MaxValue - 1, failures);
        Require.Above0(hours, "h");
        return new(failures + 0.5, hours);
    }

    /// <summary>The rate that lies below with a probability [1/h].</summary>
    /// <param name="belief">The belief.</param>
    /// <param name="probability">The probability [1]; above 0, below 1.</param>
    /// <returns>The rate [1/h].</returns>
    /// <remarks>Source: quantile of the Gamma distribution; NIST/SEMATECH e-Handbook 8.4.6.</remarks>
    public static double RateQuantile(RateBelief belief, double probability) =>
        Gamma.InvCDF(belief.Failures, 1, Below1(probability)) / belief.Hours;

    /// <summary>The time between failures that is exceeded with a probability [h].</summary>
    /// <param name="belief">The belief.</param>
    /// <param name="probability">The probability [1]; above 0, below 1.</param>
    /// <returns>Hours [h].</returns>
    /// <remarks>Source: 1 / G⁻¹(p; a, 1/b); NIST/SEMATECH e-Handbook 8.4.6.</remarks>
    public static double HoursExceeded(RateBelief belief, double probability) => 1 / RateQuantile(belief, probability);

    /// <summary>Probability that the time between failures is above some hours [1].</summary>
    /// <param name="belief">The belief.</param>
    /// <param name="hours">The hours [h]; above 0.</param>
    /// <returns>The probability.</returns>
    /// <remarks>Source: distribution of the Gamma; NIST/SEMATECH e-Handbook 8.4.6.</remarks>
    public static double ProbabilityAbove(RateBelief belief, double hours)
    {
        Require.Above0(hours, "h");
        return SpecialFunctions.GammaLowerRegularized(belief.Failures, belief.Hours / hours);
    }

    /// <summary>Hours of watching until a time between failures is shown at a probability, with a number of failures on the way [h].</summary>
    /// <param name="prior">The belief before.</param>
    /// <param name="hours">The time between failures to be shown [h]; above 0.</param>
    /// <param name="probability">The probability [1]; above 0, below 1.</param>
    /// <param name="failures">Failures that may happen; 0 or more.</param>
    /// <returns>Hours [h]; 0 where the belief shows it already.</returns>
    /// <remarks>Source: M · G⁻¹(p; a + r, 1) − b; NIST/SEMATECH e-Handbook 8.3.1.5.</remarks>
    public static double HoursToShow(RateBelief prior, double hours, double probability, int failures)
    {
        Require.Above0(hours, "h");
        Require.Between(0, int.MaxValue, failures);
        return Math.Max(0, hours * Gamma.InvCDF(prior.Failures + failures, 1, Below1(probability)) - prior.Hours);
    }

    /// <summary>The belief of somebody who names two times between failures.</summary>
    /// <param name="middleHours">The one exceeded with probability a half [h]; above that exceeded at 95 %.</param>
    /// <param name="lowHours">The one exceeded at 95 % [h]; above 0.</param>
    /// <returns>The belief.</returns>
    /// <remarks>Source: NIST/SEMATECH e-Handbook 8.2.5: the shape at which the ratio of the two quantiles is right, then the hours.</remarks>
    public static RateBelief FromTwo(double middleHours, double lowHours)
    {
        Require.Above0(lowHours, "h");
        Require.Above0(middleHours - lowHours, "h");
        var ratio = middleHours / lowHours;
        var (least, most) = (0.05, 5000.0);
        for (var step = 0; step < 200 && most - least > 1e-12 * most; step++)
        {
            var middle = Math.Sqrt(least * most);
            (least, most) = Gamma.InvCDF(middle, 1, 0.95) / Gamma.InvCDF(middle, 1, 0.5) > ratio ? (middle, most) : (least, middle);
        }

        return new(least, middleHours * Gamma.InvCDF(least, 1, 0.5));
    }

    private static double Below1(double value) => value is > 0 and < 1 ? value
        : throw new ArgumentOutOfRangeException(nameof(value), value, FormattableString.Invariant($"{value} is no probability above 0 and below 1."));
}

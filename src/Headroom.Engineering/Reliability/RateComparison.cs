using MathNet.Numerics;
using MathNet.Numerics.Distributions;

namespace Headroom.Engineering.Reliability;

/// <summary>Compares the failure rates of two populations.</summary>
public static class RateComparison
{
    /// <summary>With fewer failures in all than this nothing is told apart: common practice, no source.</summary>
    public const int EnoughFailures = 5;

    // Two outcomes as likely as each other but for the last binary digits count as equally likely.
    private const double Alike = 1 + 1e-7;

    /// <summary>How surprising so uneven counts would be if the rates were one and the same [1].</summary>
    /// <param name="one">The one population.</param>
    /// <param name="other">The other.</param>
    /// <returns>Probability of counts as unlikely or more so, both ways.</returns>
    /// <remarks>Source: exact conditional test, given x₁ + x₂ the first is binomial with T₁ / (T₁ + T₂); as R's poisson.test.</remarks>
    public static double TwoSided(FieldRecord one, FieldRecord other)
    {
        var (all, share) = (one.Failures + other.Failures, Share(one, other));
        var mine = Binomial.PMF(share, all, one.Failures);
        var sum = 0.0;
        for (var k = 0; k <= all; k++)
        {
            var term = Binomial.PMF(share, all, k);
            if (term <= mine * Alike)
                sum += term;
        }

        return Math.Min(1, sum);
    }

    /// <summary>Probability of so many failures of the one or more, if the rates were the same [1].</summary>
    /// <param name="one">The one population.</param>
    /// <param name="other">The other.</param>
    /// <returns>The one-sided probability.</returns>
    /// <remarks>Source: exact conditional test, upper tail, as <see cref="TwoSided"/>.</remarks>
    public static double OneSided(FieldRecord one, FieldRecord other) => one.Failures == 0 ? 1
        : SpecialFunctions.BetaRegularized(one.Failures, other.Failures + 1, Share(one, other));

    /// <summary>The rate of the one over that of the other, with its exact interval.</summary>
    /// <param name="one">The one population.</param>
    /// <param name="other">The other.</param>
    /// <param name="confidence">Confidence [1]; above 0, below 1.</param>
    /// <returns>The ratio and its limits.</returns>
    /// <remarks>Source: Clopper and Pearson's limits of the binomial share, turned into a ratio; as R's poisson.test.</remarks>
    public static RateRatio Ratio(FieldRecord one, FieldRecord other, double confidence)
    {
        Require.Share(confidence);
        var tail = (1 - confidence) / 2;
        var hours = other.Hours / one.Hours;
        double Turned(double share) => share / (1 - share) * hours;
        var least = one.Failures == 0 ? 0 : Turned(Beta.InvCDF(one.Failures, other.Failures + 1, tail));
        double? most = other.Failures == 0 ? null : Turned(Beta.InvCDF(one.Failures + 1, other.Failures, 1 - tail));
        return new(other.Failures == 0 ? null : one.Rate / other.Rate, least, most);
    }

    /// <summary>Probability that the one fails more often than the other [1].</summary>
    /// <param name="one">The one population.</param>
    /// <param name="other">The other.</param>
    /// <returns>The probability.</returns>
    /// <remarks>Source: two Gamma beliefs after Jeffreys' prior: P(Beta(x₁ + ½, x₂ + ½) &gt; T₁ / (T₁ + T₂)).</remarks>
    public static double FailsMore(FieldRecord one, FieldRecord other) =>
        1 - SpecialFunctions.BetaRegularized(one.Failures + 0.5, other.Failures + 0.5, Share(one, other));

    /// <summary>The same with a cause that both share taken apart: counts are compared only among units alike in it.</summary>
    /// <param name="pairs">Both populations within each stratum, such as those in hot cupboards and those in cool ones; one or more.</param>
    /// <returns>Two-sided probability of sums as far from what is expected, or farther [1]; null when no stratum has a failure.</returns>
    /// <remarks>Source: Mantel and Haenszel for rates: each stratum's count is binomial given its sum; their convolution, exact.</remarks>
    public static double? TwoSidedWithin(IReadOnlyList<(FieldRecord One, FieldRecord Other)> pairs)
    {
        var (chances, seen) = (new[] { 1.0 }, 0);
        foreach (var (one, other) in pairs)
        {
            chances = With(chances, one.Failures + other.Failures, Share(one, other));
            seen += one.Failures;
        }

        if (chances.Length == 1)
            return null;
        var mine = chances[seen];
        return Math.Min(1, chances.Where(chance => chance <= mine * Alike).Sum());
    }

    private static double[] With(double[] chances, int count, double share)
    {
        var sum = new double[chances.Length + count];
        for (var k = 0; k <= count; k++)
        {
            var term = Binomial.PMF(share, count, k);
            for (var i = 0; i < chances.Length; i++)
                sum[i + k] += chances[i] * term;
        }

        return sum;
    }

    private static double Share(FieldRecord one, FieldRecord other)
    {
        Require.Above0(one.Hours, "h");
        Require.Above0(other.Hours, "h");
        Require.Between(0, int.MaxValue, one.Failures);
        Require.Between(0, int.MaxValue, other.Failures);
        return one.Hours / (one.Hours + other.Hours);
    }
}

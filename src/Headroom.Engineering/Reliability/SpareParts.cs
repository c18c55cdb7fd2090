using MathNet.Numerics;

namespace Headroom.Engineering.Reliability;

/// <summary>How many spares a shelf wants until the supplier has sent new ones.</summary>
public static class SpareParts
{
    /// <summary>No firm keeps more.</summary>
    public const int Most = 100_000;

    /// <summary>Failures to be expected.</summary>
    /// <param name="units">Units in service; 0 or more.</param>
    /// <param name="hours">Hours until new ones come [h]; 0 or more.</param>
    /// <param name="hoursBetween">Mean time between failures [h]; above 0.</param>
    /// <returns>The mean number.</returns>
    /// <remarks>Source: m = units · hours / MTBF; Blanchard, Logistics Engineering, from memory.</remarks>
    public static double Expected(int units, double hours, double hoursBetween)
    {
        Require.Between(0, int.MaxValue, units);
        Require.AtLeast(0, hours, "h");
        Require.Above0(hoursBetween, "h");
        return units * hours / hoursBetween;
    }

    /// <summary>Probability that no more than a number fail, where the rate is known [1].</summary>
    /// <param name="expected">Failures to be expected [1]; 0 or more.</param>
    /// <param name="spares">The number; 0 or more.</param>
    /// <returns>The probability.</returns>
    /// <remarks>Source: Poisson distribution, P(X ≤ s) = Q(s + 1, m).</remarks>
    public static double Enough(double expected, int spares)
    {
        Require.AtLeast(0, expected, "failures");
        Require.Between(0, Most, spares);
        return expected == 0 ? 1 : SpecialFunctions.GammaUpperRegularized(spares + 1, expected);
    }

    /// <summary>Probability that no more than a number fail, where the rate is only believed [1].</summary>
    /// <param name="belief">What is believed of the rate.</param>
    /// <param name="unitHours">Units · hours ahead [h]; 0 or more.</param>
    /// <param name="spares">The number; 0 or more.</param>
    /// <returns>The probability.</returns>
    /// <remarks>Source: negative binomial of size a and p = b / (b + t), the predictive distribution of Gamma and Poisson.</remarks>
    public static double Enough(RateBelief belief, double unitHours, int spares)
    {
        Require.AtLeast(0, unitHours, "h");
        Require.Between(0, Most, spares);
        return unitHours == 0 ? 1 : SpecialFunctions.BetaRegularized(belief.Failures, spares + 1, belief.Hours / (belief.Hours + unitHours));
    }

    /// <summary>The fewest spares that are enough with a probability, where the rate is known.</summary>
    /// <param name="expected">Failures to be expected [1]; 0 or more, at most 10 000.</param>
    /// <param name="target">The probability wanted [1]; above 0, below 1.</param>
    /// <returns>Spares.</returns>
    /// <remarks>Source: smallest s with P(X ≤ s) ≥ target; Blanchard, Logistics Engineering, from memory.</remarks>
    public static int Needed(double expected, double target) => Smallest(spares => Enough(expected, spares), target);

    /// <summary>The fewest spares that are enough with a probability, where the rate is only believed.</summary>
    /// <param name="belief">What is believed of the rate.</param>
    /// <param name="unitHours">Units · hours ahead [h]; 0 or more.</param>
    /// <param name="target">The probability wanted [1]; above 0, below 1.</param>
    /// <returns>Spares.</returns>
    /// <remarks>Source: smallest s of the predictive distribution, as <see cref="Enough(RateBelief, double, int)"/>.</remarks>
    public static int Needed(RateBelief belief, double unitHours, double target) => Smallest(spares => Enough(belief, unitHours, spares), target);

    private static int Smallest(Func<int, double> enough, double target)
    {
        if (!(target > 0 && target < 1))
            throw new ArgumentOutOfRangeException(nameof(target), target, FormattableString.Invariant($"target is {target}; it must be a probability above 0 and below 1."));
        var most = 1;
        while (most < Most && enough(most) < target)
            most = Math.Min(Most, 2 * most);
        var least = -1;
        while (most - least > 1)
        {
            var middle = (least + most) / 2;
            (least, most) = enough(middle) >= target ? (least, middle) : (middle, most);
        }

        return most;
    }
}

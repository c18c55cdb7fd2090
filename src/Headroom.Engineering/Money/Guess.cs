using Headroom.Domain.Jobs;

namespace Headroom.Engineering.Money;

/// <summary>What guesses in three figures come to.</summary>
public static class Guess
{
    /// <summary>The mean: (low + 4 · likely + high) / 6. Source: three-point estimate, a beta distribution.</summary>
    /// <param name="guess">The three figures.</param>
    /// <returns>The mean, in their unit.</returns>
    public static decimal Mean(ThreePoint guess) => (guess.Low + 4 * guess.Likely + guess.High) / 6;

    /// <summary>The standard deviation: (high − low) / 6. Source: three-point estimate, a beta distribution.</summary>
    /// <param name="guess">The three figures.</param>
    /// <returns>The standard deviation, in their unit.</returns>
    public static decimal Deviation(ThreePoint guess) => (guess.High - guess.Low) / 6;
}

namespace Headroom.Engineering.Traffic;

/// <summary>How many of many users are at work on the line in the same moment.</summary>
public static class ActiveUsers
{
    /// <summary>The most users there may be.</summary>
    public const int Most = 1_000_000;

    // Terms this much below the largest add nothing that a double still holds.
    private const double Nothing = 1e-18;

    /// <summary>Probability that more than a number of users are active [1].</summary>
    /// <param name="users">Users; 0 or more.</param>
    /// <param name="activeShare">Probability that one of them is active at a moment [1]; 0 to 1.</param>
    /// <param name="active">The number; any.</param>
    /// <returns>The probability.</returns>
    /// <remarks>Source: binomial distribution; Kurose and Ross, Computer Networking, the example of packet switching, from memory.</remarks>
    public static double MoreThan(int users, double activeShare, int active)
    {
        Check(users, activeShare);
        if (active < 0)
            return 1;
        if (active >= users || activeShare == 0)
            return 0;
        if (activeShare == 1)
            return 1;
        var odds = activeShare / (1 - activeShare);
        var mean = users * activeShare;
        return active + 1 >= mean ? Above(users, odds, (active + 1, activeShare)) : 1 - Below(users, odds, (active, activeShare));
    }

    /// <summary>The number of active users that is not exceeded with a probability.</summary>
    /// <param name="users">Users; 0 or more.</param>
    /// <param name="activeShare">Probability that one of them is active at a moment [1]; 0 to 1.</param>
    /// <param name="certainty">The probability [1]; above 0 and below 1.</param>
    /// <returns>The smallest number k with P(X ≤ k) ≥ certainty.</returns>
    /// <remarks>Source: binomial distribution, its quantile.</remarks>
    public static int Quantile(int users, double activeShare, double certainty)
    {
        Check(users, activeShare);
        if (!(certainty > 0 && certainty < 1))
            throw new ArgumentOutOfRangeException(nameof(certainty), certainty, FormattableString.Invariant($"certainty is {certainty}; it must be a share above 0 and below 1."));
        // Guessed from the mean and the spread, then walked to where it holds.
        var spread = Math.Sqrt(users * activeShare * (1 - activeShare));
        var at = Math.Clamp((int)(users * activeShare + 2 * spread), 0, users);
        while (at < users && MoreThan(users, activeShare, at) > 1 - certainty)
            at++;
        while (at > 0 && MoreThan(users, activeShare, at - 1) <= 1 - certainty)
            at--;
        return at;
    }

    private static double Above(int users, double odds, (int From, double Share) of)
    {
        var term = Term(users, of.Share, of.From);
        var sum = 0.0;
        for (var k = of.From; k <= users && term > sum * Nothing; k++)
        {
            sum += term;
            term *= odds * (users - k) / (k + 1);
        }

        return Math.Min(1, sum);
    }

    private static double Below(int users, double odds, (int To, double Share) of)
    {
        var term = Term(users, of.Share, of.To);
        var sum = 0.0;
        for (var k = of.To; k >= 0 && term > sum * Nothing; k--)
        {
            sum += term;
            term *= k / (odds * (users - k + 1));
        }

        return Math.Min(1, sum);
    }

    private static double Term(int users, double share, int k) => Math.Exp(
        LogFactorial(users) - LogFactorial(k) - LogFactorial(users - k) + k * Math.Log(share) + (users - k) * Math.Log(1 - share));

    // ln n!: summed for few, by Stirling's series for many, whose next term is below 1e-11 from 32 on.
    private static double LogFactorial(int n)
    {
        if (n < 32)
        {
            var product = 1.0;
            for (var k = 2; k <= n; k++)
                product *= k;
            return Math.Log(product);
        }

        var x = n + 1.0;
        return (x - 0.5) * Math.Log(x) - x + 0.5 * Math.Log(2 * Math.PI) + 1 / (12 * x) - 1 / (360 * x * x * x) + 1 / (1260 * Math.Pow(x, 5));
    }

    private static void Check(int users, double activeShare)
    {
        Require.Between(0, Most, users);
        if (!(activeShare >= 0 && activeShare <= 1))
            throw new ArgumentOutOfRangeException(nameof(activeShare), activeShare, FormattableString.Invariant($"activeShare is {activeShare}; it is a probability and must lie between 0 and 1."));
    }
}

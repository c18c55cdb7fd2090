namespace Headroom.Engineering.Addressing;

/// <summary>How many addresses must be lent out when people come and go.</summary>
public static class LeasePool
{
    /// <summary>The share of the time in which the pool is to be enough.</summary>
    public const double Enough = 0.999;

    /// <summary>For how long one visitor keeps an address: the lease is renewed at its half as long as he is there.</summary>
    /// <param name="stayHours">How long he stays [h]; 0 or more.</param>
    /// <param name="leaseHours">For how long an address is lent [h]; above 0.</param>
    /// <returns>The time [h]: L + L/2 · floor(2 · stay / L).</returns>
    /// <remarks>Source: RFC 2131, section 4.4.5, renewal at half the lease, from memory.</remarks>
    public static double HeldHours(double stayHours, double leaseHours)
    {
        Require.AtLeast(0, stayHours, "h");
        Require.Above0(leaseHours, "h");
        return leaseHours + leaseHours / 2 * Math.Floor(2 * stayHours / leaseHours + 1e-9);
    }

    /// <summary>How many addresses are held on average.</summary>
    /// <param name="perHour">How many visitors come in an hour [1/h]; 0 or more.</param>
    /// <param name="heldHours">For how long each keeps an address [h]; 0 or more.</param>
    /// <returns>The mean.</returns>
    /// <remarks>Source: Little's law.</remarks>
    public static double Mean(double perHour, double heldHours)
    {
        Require.AtLeast(0, perHour, "1/h");
        Require.AtLeast(0, heldHours, "h");
        return perHour * heldHours;
    }

    /// <summary>The least pool that is enough for nearly all of the time.</summary>
    /// <param name="mean">How many are held on average [1]; 0 or more.</param>
    /// <param name="share">The share of the time [1]; above 0 and below 1.</param>
    /// <returns>The number of addresses: the quantile of a Poisson distribution.</returns>
    /// <remarks>Source: arrivals one by one at random, M/G/∞.</remarks>
    public static int Needed(double mean, double share)
    {
        Require.AtLeast(0, mean, "addresses");
        Require.Share(share);
        // Terms are kept as logarithms: e^−1440 is no number that a machine holds.
        var (term, sum, count) = (-mean, Math.Exp(-mean), 0);
        while (sum < share && count < 10_000_000)
        {
            count++;
            term += Math.Log(mean / count);
            sum += Math.Exp(term);
        }

        return count;
    }
}

namespace Headroom.Engineering.Addressing;

/// <summary>How large a subnet must be.</summary>
public static class SubnetSize
{
    /// <summary>The prefix of the smallest range that has addresses for so many devices. Its own address and the one for everybody are not for devices; a range of two is never taken, since not every device knows RFC 3021.</summary>
    /// <param name="hosts">How many devices; 0 or more.</param>
    /// <returns>The prefix; null when no range has so many.</returns>
    public static int? PrefixFor(long hosts)
    {
        for (var prefix = 30; prefix >= 1; prefix--)
        {
            if ((1L << 32 - prefix) - 2 >= hosts)
                return prefix;
        }

        return null;
    }

    /// <summary>How many devices a subnet is made for: those of today and the growth, rounded up, and the way out.</summary>
    /// <param name="today">Devices of today, lent addresses included.</param>
    /// <param name="growth">The growth as a share [1]; 0 or more.</param>
    /// <returns>How many.</returns>
    /// <remarks>Source: rule of the house; one address is the router's.</remarks>
    public static long Planned(int today, double growth)
    {
        Require.AtLeast(0, growth, "as a share");
        return (long)Math.Ceiling(today * (1 + growth) - 1e-9) + 1;
    }
}

namespace Headroom.Engineering.Money;

/// <summary>Divides an amount so that no coin is lost.</summary>
public static class Shares
{
    /// <summary>Divides by weights: each gets its share rounded down, and the coins left over go to the largest remainders, of equal ones to the first. Source: largest-remainder method.</summary>
    /// <param name="amount">The amount, of whole smallest coins; 0 or more.</param>
    /// <param name="weights">The weights; 0 or more each, not all 0.</param>
    /// <param name="places">Places behind the point.</param>
    /// <returns>The shares, in the order of the weights; they add up to the amount.</returns>
    public static IReadOnlyList<decimal> Of(decimal amount, IReadOnlyList<decimal> weights, int places)
    {
        var all = weights.Sum();
        if (amount < 0 || all <= 0 || weights.Any(weight => weight < 0))
            throw new ArgumentOutOfRangeException(nameof(weights), "The amount and every weight must be 0 or more, and one weight above 0.");
        var coin = 1m;
        for (var i = 0; i < places; i++)
            coin /= 10;
        var exact = weights.Select(weight => amount * weight / all).ToList();
        var shares = exact.ConvertAll(share => Math.Floor(share / coin) * coin);
        var left = (int)Math.Round((amount - shares.Sum()) / coin);
        foreach (var at in Enumerable.Range(0, exact.Count).OrderByDescending(at => exact[at] - shares[at]).Take(left))
            shares[at] += coin;
        return shares;
    }
}

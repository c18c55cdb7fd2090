namespace Headroom.Engineering.Money;

/// <summary>Cost, price, and what remains. A margin is a share of the price, a mark-up a share of the cost; 25 % of one is 20 % of the other.</summary>
public static class Margins
{
    /// <summary>The margin that a mark-up leaves: m / (1 + m). Source: arithmetic.</summary>
    /// <param name="markUp">The mark-up as a share of the cost; 0 or more.</param>
    /// <returns>The margin as a share of the price.</returns>
    public static decimal OfMarkUp(decimal markUp)
    {
        NotNegative(markUp);
        return markUp / (1 + markUp);
    }

    /// <summary>The price at which a margin remains: cost / (1 − margin). Source: arithmetic.</summary>
    /// <param name="cost">The cost; 0 or more.</param>
    /// <param name="margin">The margin as a share of the price, 0 to below 1.</param>
    /// <returns>The price, not rounded.</returns>
    public static decimal Price(decimal cost, decimal margin)
    {
        NotNegative(cost);
        Share(margin);
        return cost / (1 - margin);
    }

    /// <summary>What remains of a price: (price − cost) / price. Source: arithmetic.</summary>
    /// <param name="cost">The cost; 0 or more.</param>
    /// <param name="price">The price; 0 or more.</param>
    /// <returns>The margin as a share of the price, below 0 for a loss; null without a price.</returns>
    public static decimal? Of(decimal cost, decimal price)
    {
        NotNegative(cost);
        NotNegative(price);
        return price == 0 ? null : (price - cost) / price;
    }

    /// <summary>The most that may be taken off so that a floor is kept: 1 − cost / (1 − floor) / price. Source: arithmetic.</summary>
    /// <param name="cost">The cost; 0 or more.</param>
    /// <param name="price">The price before anything is taken off; 0 or more.</param>
    /// <param name="floor">The least margin, 0 to below 1.</param>
    /// <returns>The discount as a share of the price, below 0 when the floor is not kept as it is; null without a price.</returns>
    public static decimal? MostDiscount(decimal cost, decimal price, decimal floor)
    {
        NotNegative(price);
        return price == 0 ? null : 1 - Price(cost, floor) / price;
    }

    private static void NotNegative(decimal value, [System.Runtime.CompilerServices.CallerArgumentExpression(nameof(value))] string name = "")
    {
        if (value < 0)
            throw new ArgumentOutOfRangeException(name, value, FormattableString.Invariant($"{name} is {value}; it must be 0 or more."));
    }

    private static void Share(decimal margin)
    {
        if (margin is < 0 or >= 1)
            throw new ArgumentOutOfRangeException(nameof(margin), margin, FormattableString.Invariant($"margin is {margin}; it must be 0 or more and below 1."));
    }
}

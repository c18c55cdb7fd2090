namespace Headroom.Engineering.Money;

/// <summary>Money now and money later.</summary>
public static class OverYears
{
    /// <summary>What one unit at the end of a year is worth now: (1 + i)^−n. Source: NIST Handbook 135, from memory.</summary>
    /// <param name="interest">Interest a year, above −1.</param>
    /// <param name="years">How many years; 0 or more.</param>
    /// <returns>The factor.</returns>
    public static decimal Once(decimal interest, int years)
    {
        Require.Between(0, 1200, years);
        var factor = 1m;
        for (var i = 0; i < years; i++)
            factor /= 1 + interest;
        return factor;
    }

    /// <summary>What one unit at the end of each year is worth now: (1 − (1 + i)^−n) / i. Source: NIST Handbook 135, from memory.</summary>
    /// <param name="interest">Interest a year; 0 or more.</param>
    /// <param name="years">How many years; 0 or more.</param>
    /// <returns>The factor; the years themselves without interest.</returns>
    public static decimal Each(decimal interest, int years) => interest == 0 ? years : (1 - Once(interest, years)) / interest;

    /// <summary>The equal amount at the end of each year that one unit now comes to. Source: NIST Handbook 135, from memory.</summary>
    /// <param name="interest">Interest a year, or a period; 0 or more.</param>
    /// <param name="years">How many years, or periods; 1 or more.</param>
    /// <returns>The factor.</returns>
    public static decimal Equal(decimal interest, int years)
    {
        Require.Between(1, 1200, years);
        return 1 / Each(interest, years);
    }

    /// <summary>What amounts at the ends of years are worth now. Source: end-of-year convention.</summary>
    /// <param name="interest">Interest a year; above −1.</param>
    /// <param name="amounts">The amounts, the first one now.</param>
    /// <returns>The worth now.</returns>
    public static decimal WorthNow(decimal interest, IReadOnlyList<decimal> amounts)
    {
        var worth = 0m;
        for (var year = 0; year < amounts.Count; year++)
            worth += amounts[year] * Once(interest, year);
        return worth;
    }
}

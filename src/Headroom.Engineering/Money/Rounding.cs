using Headroom.Domain.Jobs;

namespace Headroom.Engineering.Money;

/// <summary>Amounts that can be paid. Every amount is rounded once, before it is added, kept or shown: a sum of rounded lines needs no other rounding.</summary>
public static class Rounding
{
    /// <summary>Rounds an amount.</summary>
    /// <param name="amount">The amount.</param>
    /// <param name="places">Places behind the point, 0 to 6.</param>
    /// <param name="ties">Where half a smallest coin goes.</param>
    /// <returns>The amount that can be paid.</returns>
    public static decimal Of(decimal amount, int places, TieRule ties)
    {
        Require.Between(0, 6, places);
        return ties switch
        {
            TieRule.Even => Math.Round(amount, places, MidpointRounding.ToEven),
            TieRule.Away => Math.Round(amount, places, MidpointRounding.AwayFromZero),
            _ => Up(amount, places),
        };
    }

    /// <summary>The rule in words.</summary>
    /// <param name="ties">The rule.</param>
    /// <returns>The words.</returns>
    public static string InWords(TieRule ties) => ties switch
    {
        TieRule.Even => "half of the smallest coin goes to the even digit",
        TieRule.Away => "half of the smallest coin is rounded away from zero",
        _ => "half of the smallest coin is rounded up",
    };

    // Ties towards plus infinity: below zero the tie goes to the amount nearer zero.
    private static decimal Up(decimal amount, int places)
    {
        var near = Math.Round(amount, places, MidpointRounding.AwayFromZero);
        var coin = 1m / Power(places);
        return amount < 0 && amount - near == coin / 2 ? near + coin : near;
    }

    private static decimal Power(int places)
    {
        var power = 1m;
        for (var i = 0; i < places; i++)
            power *= 10;
        return power;
    }
}

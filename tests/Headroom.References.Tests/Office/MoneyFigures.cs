using System.Globalization;
using Headroom.Domain.Jobs;
using Headroom.Engineering.Money;

namespace Headroom.References.Tests.Office;

internal static class MoneyFigures
{
    private static readonly char[] Between = [' ', ','];

    internal static Figure Work(Printed printed)
    {
        var n = Numbers(printed.What);
        return printed.Id switch
        {
            "7/ties" => Ties(printed.What, n),
            "7/tax" => Tax(printed.What, n),
            "7/split" => string.Join(' ', Shares.Of(n[0], n[1..], 2).Select(share => share.ToString("F2", CultureInfo.InvariantCulture))),
            "7/factors" => (double)Factor(printed.What, n[0] / 100, (int)n[1]),
            "7/now" => (double)OverYears.WorthNow(n[^1] / 100, n[..^1]),
            "7/loan" => (double)(n[0] * OverYears.Equal(n[1] / 100 / 12, (int)n[2])),
            "7/energy" => Power(printed.What, n),
            "7/owning" => Owned(printed.What, n),
            "7/places" => MinorUnits.Of(printed.What[^3..]),
            _ when printed.What.StartsWith("margin", StringComparison.Ordinal) => 100 * (double)Margins.OfMarkUp(n[0] / 100),
            _ => (double)Rounding.Of(Margins.Price(n[0], n[1] / 100), 2, TieRule.Away),
        };
    }

    private static Figure Ties(string what, decimal[] n) =>
        Rounding.Of(n[0], (int)n[1], RuleOf(what)).ToString("F" + n[1].ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);

    private static Figure Tax(string what, decimal[] n)
    {
        var terms = new QuoteTerms([("standard", n[^1] / 100)], 0, what.StartsWith("tax by line", StringComparison.Ordinal), RuleOf(what), 2);
        return Quote.Of(n[..^1].Select(net => new PricedLine("line", 1, "", null, net, null, null)), terms).Tax.ToString("F2", CultureInfo.InvariantCulture);
    }

    private static decimal Factor(string what, decimal interest, int years) =>
        what.StartsWith("once", StringComparison.Ordinal) ? OverYears.Once(interest, years)
        : what.StartsWith("each", StringComparison.Ordinal) ? OverYears.Each(interest, years)
        : OverYears.Equal(interest, years);

    private static Figure Power(string what, decimal[] n)
    {
        if (what.EndsWith("today", StringComparison.Ordinal))
            return (double)new Owning(0, n[0], [], n[2] / 100, (int)n[1]).WorthNow;
        var behind = what.Contains("behind", StringComparison.Ordinal);
        var energy = Energy.KilowattHoursAYear((double)(behind ? n[0] / n[1] : n[0]));
        return (double)(what.Contains(" at ", StringComparison.Ordinal) ? Rounding.Of(energy * n[^1], 2, TieRule.Away) : energy);
    }

    private static Figure Owned(string what, decimal[] n)
    {
        var owning = new Owning(n[0], Energy.KilowattHoursAYear((double)n[1]) * n[2] + n[3], [], n[4] / 100, (int)n[5]);
        return (double)(what.EndsWith("today", StringComparison.Ordinal) ? owning.WorthNow : owning.EqualYearly);
    }

    private static TieRule RuleOf(string what) =>
        what.Contains("even", StringComparison.Ordinal) ? TieRule.Even : what.EndsWith("up", StringComparison.Ordinal) ? TieRule.Up : TieRule.Away;

    private static decimal[] Numbers(string what) =>
        [.. what.Split(Between, StringSplitOptions.RemoveEmptyEntries).Select(word => decimal.TryParse(word, NumberStyles.Number, CultureInfo.InvariantCulture, out var number) ? number : (decimal?)null).OfType<decimal>()];
}

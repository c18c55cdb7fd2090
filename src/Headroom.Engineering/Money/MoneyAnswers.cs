using System.Globalization;
using Headroom.Domain.Ledgers;

namespace Headroom.Engineering.Money;

/// <summary>Answers the questions people ask about an offer.</summary>
internal static class MoneyAnswers
{
    /// <summary>The answers; those about costs are inside.</summary>
    public static IEnumerable<Answer> Of(MoneyResult result)
    {
        var lines = result.Lines.Where(line => line.Option is null && line.Net is not null).ToList();
        yield return new Answer(MoneyLedger.Offer, "What is in it?", $"{string.Join("; ", lines.Select(line => $"{MoneyWorking.Told(line)}: {Amount(line.Net!.Value, result)}"))}.");
        yield return new Answer(MoneyLedger.Offer, "How is it rounded?", result.Offer.Terms.RoundingInWords);
        yield return new Answer(MoneyLedger.Offer, "What does each line cost us?", $"{string.Join("; ", lines.Select(line => Cost(line, result)))}.") { Inside = true };
        var open = result.NotKnown.Select(line => line.Question).OfType<string>().Distinct().ToList();
        if (open.Count > 0)
            yield return new Answer(MoneyLedger.Offer, "What is still to be found out?", string.Join(" ", open.Select(Words.Capital))) { Inside = true };
    }

    private static string Cost(PricedLine line, MoneyResult result) =>
        $"{MoneyWorking.Told(line)}: {(line.Cost is { } cost ? Amount(Rounding.Of(cost, result.Offer.Terms.Places, result.Offer.Terms.Ties), result) : "not known")}";

    private static string Amount(decimal amount, MoneyResult result) => $"{amount.ToString("F" + result.Offer.Terms.Places.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture)} {result.Currency}";
}

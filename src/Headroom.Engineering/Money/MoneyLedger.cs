using Headroom.Domain.Jobs;
using Headroom.Domain.Ledgers;
using Headroom.Engineering.Binding;

namespace Headroom.Engineering.Money;

/// <summary>Turns an offer into ledger entries. What is for the firm's own eyes is marked inside.</summary>
public static class MoneyLedger
{
    /// <summary>The name of the discipline.</summary>
    public const string Discipline = "money";

    /// <summary>The subject of the entries about the offer.</summary>
    public const string Offer = "offer";

    /// <summary>The entries of a result.</summary>
    /// <param name="result">The result.</param>
    /// <returns>The entries.</returns>
    public static List<LedgerEntry> Entries(MoneyResult result)
    {
        var entries = new List<LedgerEntry>(4);
        var (terms, reserve) = (result.Terms, result.Bound.Job.Policy.ReserveOf("money"));
        if (terms.Budget is not null)
            entries.Add(Budget(result, reserve));
        if (terms.LeastMargin is { } floor)
        {
            entries.Add(Margin(result, 100 * (decimal)floor.Value.Value, reserve));
            if (terms.Discount is not null)
                entries.Add(Discount(result, (decimal)floor.Value.Value, reserve));
        }

        if (AfterwardsSum.Of(result) is { } after)
            AfterwardsEntries.Add(entries, result, after, reserve);
        return entries;
    }

    private static LedgerEntry Budget(MoneyResult result, Reserve reserve)
    {
        var budget = result.Terms.Budget!;
        var missing = result.NotKnown.Where(line => line.Net is null).ToList();
        var entry = new EntryDraft(Discipline, Offer, "budget", "price with tax", result.Currency, "money").With(
            (double)result.Offer.Gross,
            (double)budget.Value.Amount,
            reserve,
            new LateStory(
                e => $"The offer comes to {Words.Of(e.Demand!.Value)} {result.Currency} with tax; {Words.Of(e.Limit!.Value)} are to be spent.",
                e => new Working(
                    "Σ lines − discount + tax",
                    [
                        .. MoneyWorking.Prices(result),
                        new("budget", e.Limit, result.Currency, Origins.Of(budget.Origin, budget.At)),
                        LateStory.ReserveInput(e, reserve),
                    ],
                    MoneyWorking.Totals(result),
                    result.Offer.Terms.RoundingInWords),
                e => [new("price with tax", result.Currency, e.Demand, e.Limit, e.Limit - e.Reserve)]),
            missing.Count == 0 ? null : new KnownParts(result.Lines.Count(line => line.Option is null) - missing.Count, result.Lines.Count(line => line.Option is null)));
        return entry with
        {
            Question = entry.Studied == Verdict.Unknown ? missing[0].Question : null,
            Advice = entry.Studied == Verdict.Short ? ["offer as options what can wait", "or say plainly what the budget leaves out"] : [],
        };
    }

    private static LedgerEntry Margin(MoneyResult result, decimal floor, Reserve reserve)
    {
        var whole = result.NotKnown.Count == 0;
        var entry = new EntryDraft(Discipline, Offer, "margin", "margin of the offer", "%", "money") { Sense = Sense.AtLeast, Inside = true }.With(
            (double)floor,
            whole ? 100 * (double?)result.Margin : null,
            reserve,
            new LateStory(
                e => $"Of {Words.Of((double)result.Offer.Net)} {result.Currency} without tax {Words.Of(e.Limit!.Value)} % remain; at least {Words.Of(e.Demand!.Value)} % are wanted.",
                e => new Working(
                    "(price − cost) / price: a share of the price, not of the cost",
                    [.. MoneyWorking.Costs(result), new("least margin", (double)floor, "%", Origins.Of(result.Terms.LeastMargin)), LateStory.ReserveInput(e, reserve)],
                    [
                        new("price without tax", "lines less discount", (double)result.Offer.Net, result.Currency),
                        new("cost", "the sum, with what is put aside", (double)result.Cost, result.Currency),
                        new("margin", $"({Words.Of((double)result.Offer.Net)} − {Words.Of((double)result.Cost)}) / {Words.Of((double)result.Offer.Net)}", e.Limit, "%"),
                        new("the same as a mark-up", "a share of the cost", result.Cost == 0 ? null : 100 * (double)((result.Offer.Net - result.Cost) / result.Cost), "%"),
                    ],
                    "arithmetic"),
                e =>
                [
                    new("cost of the whole", result.Currency, (double)result.Cost, (double)(result.Offer.Net * (1 - floor / 100)), null),
                    new("price without tax", result.Currency, (double)result.Offer.Net, (double)Margins.Price(result.Cost, floor / 100), null, UpTo: false),
                ]));
        return entry with
        {
            Question = whole ? null : result.NotKnown[0].Question,
            Advice = entry.Studied == Verdict.Short
                ? [$"a price of at least {Words.Of((double)Rounding.Of(Margins.Price(result.Cost, floor / 100), result.Offer.Terms.Places, result.Offer.Terms.Ties))} {result.Currency} without tax", "or less cost"]
                : [],
        };
    }

    private static LedgerEntry Discount(MoneyResult result, decimal floor, Reserve reserve)
    {
        var whole = result.NotKnown.Count == 0;
        var most = whole ? 100 * Margins.MostDiscount(result.Cost, result.Offer.Before, floor) : null;
        var entry = new EntryDraft(Discipline, Offer, "discount", "discount", "%", "money") { Inside = true }.With(
            100 * (double)result.Offer.Terms.Discount,
            (double?)most,
            reserve,
            new LateStory(
                e => $"{Words.Of(e.Demand!.Value)} % are taken off; {Words.Of(e.Limit!.Value)} % would still keep the least margin.",
                e => new Working(
                    "1 − cost / (1 − least margin) / price before",
                    [
                        new("cost", (double)result.Cost, result.Currency, "the lines"),
                        new("price before", (double)result.Offer.Before, result.Currency, "the lines"),
                        new("least margin", 100 * (double)floor, "%", Origins.Of(result.Terms.LeastMargin)),
                        new("discount", e.Demand, "%", Origins.Of(result.Terms.Discount)),
                    ],
                    [new("most that keeps it", $"1 − {Words.Of((double)result.Cost)} / {Words.Of(1 - (double)floor)} / {Words.Of((double)result.Offer.Before)}", e.Limit, "%")],
                    "arithmetic; the rounding of a coin is not in it"),
                e => [new("discount", "%", e.Demand, e.Limit, e.Limit - e.Reserve)]));
        return entry with { Question = whole ? null : result.NotKnown[0].Question };
    }
}

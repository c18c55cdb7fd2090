using Headroom.Domain.Findings;
using Headroom.Domain.Jobs;
using Headroom.Domain.Quantities;
using Headroom.Engineering.Money;

namespace Headroom.Engineering.Sums.Money;

/// <summary>The price at which a margin remains.</summary>
internal static class PriceAtMargin
{
    private static readonly NumberInput Cost = new("cost", "what it costs the firm, in any currency", new Bounds(0, 1_000_000)) { IsWhole = false };
    private static readonly QuantityInput Margin = new("margin", "what is to remain, as a share of the price", Share.Units, new(0, 90, "%"));

    private static readonly SumOutput Price = new("price", "", "price without tax");
    private static readonly SumOutput MarkUp = new("mark-up", "%", "the same as a share of the cost");

    /// <summary>The sum.</summary>
    public static Sum Sum { get; } = new()
    {
        Name = "price-at-margin",
        Discipline = MoneySums.Discipline,
        Answers = "what must be charged so that a margin remains?",
        Inputs = [Cost, Margin],
        Outputs = [Price, MarkUp],
        Formula = "price = cost / (1 − margin); margin is a share of the price, mark-up a share of the cost",
        Source = "arithmetic; rounded to two places, half away from zero",
        Example = "cost 240 margin 25 %",
        Work = Work,
    };

    private static SumAnswer Work(SumGiven given)
    {
        var (cost, margin) = ((decimal)given[Cost], (decimal)given[Margin]);
        var price = Rounding.Of(Margins.Price(cost, margin), 2, TieRule.Away);
        var markUp = 100 * margin / (1 - margin);
        return new SumAnswer(
            $"It must be charged at {new Told((double)price, "")}, which is the cost and {new Told((double)markUp, "%")} of it.",
            [Price.Is((double)price), MarkUp.Is((double)markUp)],
            [new("price", $"{Words.Of(given[Cost])} / (1 − {Words.Of(given[Margin])})", (double)price, "")]);
    }
}

using Headroom.Domain.Quantities;
using Headroom.Engineering.Money;

namespace Headroom.Engineering.Sums.Money;

/// <summary>The margin that a mark-up leaves.</summary>
internal static class MarginOfMarkUp
{
    private static readonly QuantityInput MarkUp = new("mark-up", "what is put on, as a share of the cost", Share.Units, new(0, 1000, "%"));

    private static readonly SumOutput Margin = new("margin", "%", "what remains, as a share of the price");

    /// <summary>The sum.</summary>
    public static Sum Sum { get; } = new()
    {
        Name = "margin-of-mark-up",
        Discipline = MoneySums.Discipline,
        Answers = "which margin does a mark-up leave?",
        Inputs = [MarkUp],
        Outputs = [Margin],
        Formula = "margin = m / (1 + m)",
        Source = "arithmetic",
        Example = "mark-up 25 %",
        Work = Work,
    };

    private static SumAnswer Work(SumGiven given)
    {
        var margin = 100 * (double)Margins.OfMarkUp((decimal)given[MarkUp]);
        return new SumAnswer(
            $"{new Told(margin, "%")} of the price remain.",
            [Margin.Is(margin)],
            [new("margin", $"{Words.Of(given[MarkUp])} / (1 + {Words.Of(given[MarkUp])})", margin, "%")]);
    }
}

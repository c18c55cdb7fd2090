using Headroom.Domain.Findings;
using Headroom.Domain.Quantities;
using Headroom.Engineering.Money;

namespace Headroom.Engineering.Sums.Money;

/// <summary>What owning something costs over years.</summary>
internal static class CostOfOwning
{
    private static readonly NumberInput First = new("first", "what is paid at the beginning", new Bounds(0, 10_000_000)) { IsWhole = false };
    private static readonly NumberInput Yearly = new("yearly", "what is paid at the end of each year", new Bounds(0, 1_000_000)) { IsWhole = false };
    private static readonly QuantityInput Interest = new("interest", "what money costs in a year", Share.Units, new(0, 50, "%"));
    private static readonly NumberInput Years = new("years", "over how many", new Bounds(1, 40));

    private static readonly SumOutput Today = new("today", "", "all of it, in money of today");
    private static readonly SumOutput Equal = new("each-year", "", "the same, each year");

    /// <summary>The sum.</summary>
    public static Sum Sum { get; } = new()
    {
        Name = "cost-of-owning",
        Discipline = MoneySums.Discipline,
        Answers = "what does owning something cost over years?",
        Inputs = [First, Yearly, Interest, Years],
        Outputs = [Today, Equal],
        Formula = "first + yearly · (1 − (1 + i)^−n) / i",
        Source = "NIST Handbook 135, from memory; payments at the end of each year",
        Example = "first 2500 yearly 360 interest 6 % years 5",
        Work = Work,
    };

    private static SumAnswer Work(SumGiven given)
    {
        var owning = new Owning((decimal)given[First], (decimal)given[Yearly], [], (decimal)given[Interest], (int)given[Years]);
        var (today, each) = ((double)owning.WorthNow, (double)owning.EqualYearly);
        return new SumAnswer(
            $"{new Told(today, "")} in money of today, or {new Told(each, "")} each year.",
            [Today.Is(today), Equal.Is(each)],
            [
                new("of one each year", "(1 − (1 + i)^−n) / i", (double)OverYears.Each(owning.Interest, owning.Years), ""),
                new("today", $"{Words.Of(given[First])} + {Words.Of(given[Yearly])} times that", today, ""),
                new("each year", "divided by it", each, ""),
            ]);
    }
}

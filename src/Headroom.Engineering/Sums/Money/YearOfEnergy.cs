using Headroom.Domain.Findings;
using Headroom.Domain.Quantities;

namespace Headroom.Engineering.Sums.Money;

/// <summary>What running something costs in a year.</summary>
internal static class YearOfEnergy
{
    private static readonly QuantityInput Draw = new("draw", "what is drawn all the time", Watts.Units, new(0.1, 20_000, "W"));
    private static readonly NumberInput Each = new("price", "of a kilowatt-hour, in any currency", new Bounds(0, 100)) { IsWhole = false };
    private static readonly QuantityInput Efficiency = new("efficiency", "of the supply in between", Share.Units, new(20, 100, "%")) { Default = "100 %", DefaultWhy = "the draw is taken as read at the mains" };

    private static readonly SumOutput Cost = new("cost", "", "cost of a year");
    private static readonly SumOutput Energy = new("energy", "kWh", "energy of a year");

    /// <summary>The sum.</summary>
    public static Sum Sum { get; } = new()
    {
        Name = "year-of-energy",
        Discipline = MoneySums.Discipline,
        Answers = "what does running something cost in a year?",
        Inputs = [Draw, Each, Efficiency],
        Outputs = [Cost, Energy],
        Formula = "P / η · 8760 h · price",
        Source = "a year of 365 days",
        Example = "draw 100 W price 0.25",
        Work = Work,
    };

    private static SumAnswer Work(SumGiven given)
    {
        var energy = Headroom.Engineering.Money.Energy.KilowattHoursAYear(given[Draw] / given[Efficiency]);
        var cost = energy * (decimal)given[Each];
        return new SumAnswer(
            $"{new Told((double)energy, "kWh")} in a year, which cost {new Told((double)cost, "")}.",
            [Cost.Is((double)cost), Energy.Is((double)energy)],
            [new("energy", $"{Words.Of(given[Draw])} W / {Words.Of(given[Efficiency])} · 8760 h", (double)energy, "kWh"), new("cost", $"{Words.Of((double)energy)} · {Words.Of(given[Each])}", (double)cost, "")]);
    }
}

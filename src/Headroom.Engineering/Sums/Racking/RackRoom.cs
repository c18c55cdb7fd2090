using Headroom.Domain.Quantities;
using Headroom.Engineering.Racking;

namespace Headroom.Engineering.Sums.Racking;

/// <summary>How much height things fill in a rack.</summary>
internal static class RackRoom
{
    private static readonly QuantityInput Things = new("things", "height of each thing", RackUnits.Units, new(0.5, 60, "U")) { IsList = true, ListExample = "3 x 1 U, 2 U" };
    private static readonly QuantityInput Height = new("height", "height of the rack", RackUnits.Units, new(1, 60, "U"));

    private static readonly SumOutput Left = new("left", "U", "units left");
    private static readonly SumOutput Filled = new("filled", "U", "units filled, each thing rounded up to whole ones");
    private static readonly SumOutput Mounting = new("mounting-height", "mm", "mounting height of the rack");

    /// <summary>The sum.</summary>
    public static Sum Sum { get; } = new()
    {
        Name = "rack-room",
        Discipline = RackingSums.Discipline,
        Answers = "do these things go into a rack?",
        Inputs = [Things, Height],
        Outputs = [Left, Filled, Mounting],
        Formula = "height − Σ units, one unit being 44.45 mm",
        Source = "EIA/ECA-310-E, IEC 60297",
        Example = "things 4 x 1 U, 2 U height 12 U",
        Work = Work,
    };

    private static SumAnswer Work(SumGiven given)
    {
        var filled = given.All(Things).Sum(units => Math.Ceiling(units - 1e-9));
        var left = given[Height] - filled;
        return new SumAnswer(
            $"They fill {new Told(filled, "U")} of {new Told(given[Height], "U")}; {new Told(left, "U")} are left.",
            [Left.Is(left), Filled.Is(filled), Mounting.Is(RackHeight.SpaceMillimetres(given[Height]))],
            [new("filled", "the sum, rounded up thing by thing", filled, "U"), new("left", $"{Words.Of(given[Height])} − {Words.Of(filled)}", left, "U")])
        {
            Holds = left >= 0,
        };
    }
}

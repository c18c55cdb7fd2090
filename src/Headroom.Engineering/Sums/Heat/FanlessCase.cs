using Headroom.Domain.Quantities;
using Headroom.Engineering.Heat;
using static Headroom.Engineering.Sums.Heat.HeatSumInputs;

namespace Headroom.Engineering.Sums.Heat;

/// <summary>How warm the case of a fanless box grows.</summary>
internal static class FanlessCase
{
    private static readonly QuantityInput Width = new("width", "width of the box", Metres.Units, new(30, 600, "mm"));
    private static readonly QuantityInput Depth = new("depth", "depth of the box", Metres.Units, new(30, 600, "mm"));
    private static readonly QuantityInput Height = new("height", "height of the box", Metres.Units, new(10, 300, "mm"));
    private static readonly WordInput Top = new("top", "whether air gets to its top", "free", "covered") { Default = "free", DefaultWhy = "nothing lies on it" };

    private static readonly SumOutput Kelvins = new("rise", "K", "case above the air");
    private static readonly SumOutput Case = new("case", "°C", "its case");

    /// <summary>The sum.</summary>
    public static Sum Sum { get; } = new()
    {
        Name = "fanless-case",
        Discipline = HeatSums.Discipline,
        Answers = "how warm does the case of a box without fans get, alone or with another on it?",
        Inputs = [Warmth, Width, Depth, Height, Top, Around],
        Outputs = [Kelvins, Case],
        Formula = "ΔT = P / (h A), h = 9 W/(m²·K), A without the bottom, and without the top where it is covered",
        Source = "still air and radiation of a small painted box, from memory (8 to 11)",
        Example = "heat 7 W width 180 mm depth 110 mm height 29 mm",
        Work = Work,
    };

    private static SumAnswer Work(SumGiven given)
    {
        var covered = given.Word(Top) == "covered";
        var area = 2 * given[Height] * (given[Width] + given[Depth]) + (covered ? 0 : given[Width] * given[Depth]);
        var rise = ClosedBox.CaseRise(given[Warmth], area);
        var surface = given[Around] + rise;
        return new SumAnswer(
            $"Its case settles {new Told(Math.Round(rise, 1), "K")} above the air, at {new Told(Math.Round(surface, 1), "°C")}.",
            [Kelvins.Is(rise), Case.Is(surface)],
            [new("A", "its faces that touch the air", area, "m²"), new("rise", $"{Words.Of(given[Warmth])} / (9 · {Words.Of(area)})", rise, "K")])
        {
            Notes = surface > TouchLimits.Metal ? [$"People do not touch bare metal of more than some 60 °C for a second, nor plastic of more than some 77 °C (from memory)."] : [],
            Cautions = covered ? [CautionTable.HotStack] : [],
        };
    }
}

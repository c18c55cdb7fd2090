using Headroom.Domain.Quantities;
using Headroom.Engineering.Heat;
using static Headroom.Engineering.Sums.Heat.HeatSumInputs;

namespace Headroom.Engineering.Sums.Heat;

/// <summary>How large two vents have to be.</summary>
internal static class VentsNeeded
{
    private static readonly QuantityInput Apart = new("apart", "height between the middles of the low and the high vent", Metres.Units, new(0.1, 10, "m"));
    private static readonly QuantityInput FreeShare = new("free", "what a louvre or mesh leaves free of its hole", Share.Units, new(10, 100, "%")) { Default = "40 %", DefaultWhy = "a louvre (common practice, no source)" };

    private static readonly SumOutput Each = new("each-vent", "cm2", "free area of each of the two");
    private static readonly SumOutput Hole = new("each-hole", "cm2", "hole for each, with its louvre or mesh");
    private static readonly SumOutput Moved = new("air", "m3/h", "air that rises through them");

    /// <summary>The sum.</summary>
    public static Sum Sum { get; } = new()
    {
        Name = "vents-needed",
        Discipline = HeatSums.Discipline,
        Answers = "how large must a low and a high vent be to keep a cupboard cool?",
        Inputs = [Warmth, Rise, Apart, FreeShare, Around],
        Outputs = [Each, Hole, Moved],
        Formula = "V = P / (ρ c ΔT); A = √2 V / (0.6 √(2 g h ΔT / Ti))",
        Source = "stack effect with Cd 0.6, made for buildings; walls are not counted, which is on the safe side",
        Example = "heat 55 W rise 8 K apart 1.1 m",
        Work = Work,
    };

    private static SumAnswer Work(SumGiven given)
    {
        var area = 1e4 * Vents.AreaFor(given[Warmth], given[Rise], given[Apart], given[Around]);
        var flow = SecondsPerHour * Air.FlowFor(given[Warmth], given[Rise]);
        var hole = area / given[FreeShare];
        return new SumAnswer(
            $"Two vents of {new Told(Math.Ceiling(area), "cm2")} free area each keep it: holes of {new Told(Math.Ceiling(hole), "cm2")} with their louvres.",
            [Each.Is(area), Hole.Is(hole), Moved.Is(flow)],
            [
                new("air", $"{Words.Of(given[Warmth])} W / (ρ c · {Words.Of(given[Rise])} K)", flow, "m3/h"),
                new("each vent", "√2 V over the speed of the rising air", area, "cm2"),
                new("each hole", $"over {Words.Of(100 * given[FreeShare])} %", hole, "cm2"),
            ])
        {
            Notes = [$"One vent twice as large helps by a quarter only: it takes a low one and a high one."],
            Cautions = [CautionTable.CutVents],
        };
    }
}

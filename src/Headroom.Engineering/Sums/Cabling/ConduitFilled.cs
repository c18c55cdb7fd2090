using Headroom.Domain.Quantities;
using Headroom.Engineering.Cabling;

namespace Headroom.Engineering.Sums.Cabling;

/// <summary>How full a conduit is.</summary>
internal static class ConduitFilled
{
    private static readonly QuantityInput Inside = new("inside", "inner diameter of the conduit", Metres.Units, new(5, 500, "mm"));
    private static readonly QuantityInput Cables = new("cables", "outer diameter of each cable", Metres.Units, new(0.5, 100, "mm")) { IsList = true, ListExample = "7 x 6.1 mm, 2 x 7.5 mm" };

    private static readonly SumOutput Fill = new("fill", "%", "part of the conduit that is filled");
    private static readonly SumOutput Limit = new("limit", "%", "most for so many cables");
    private static readonly SumOutput More = new("more", "", "more cables like the thickest that still go in");

    /// <summary>The sum.</summary>
    public static Sum Sum { get; } = new()
    {
        Name = "conduit-fill",
        Discipline = CablingSums.Discipline,
        Answers = "do these cables go into a conduit?",
        Inputs = [Inside, Cables],
        Outputs = [Fill, Limit, More],
        Formula = "fill = Σ d² / D²; at most 53 % for one cable, 31 % for two, 40 % for three or more",
        Source = "NFPA 70, chapter 9, Table 1; a cable of many pairs counts as round (note 9, from memory)",
        Example = "inside 26.6 mm cables 7 x 6.1 mm",
        Work = Work,
    };

    private static SumAnswer Work(SumGiven given)
    {
        var cables = given.All(Cables);
        var area = ConduitFill.AreaSquareMillimetres(1000 * given[Inside]);
        var filled = cables.Sum(cable => ConduitFill.AreaSquareMillimetres(1000 * cable));
        var share = filled / area;
        var most = ConduitFill.MostShare(cables.Count);
        var fits = ConduitFill.Fits(cables.Count, share);
        return new SumAnswer(
            fits
                ? $"They go in: {new Told(100 * share, "%")} are filled of at most {new Told(100 * most, "%")}."
                : (FormattableString)$"They do not go in: {new Told(100 * share, "%")} would be filled, and {new Told(100 * most, "%")} are allowed.",
            [Fill.Is(100 * share), Limit.Is(100 * most), More.Is(MoreOf(cables, (filled, area)))],
            [
                new("conduit", $"π · ({Words.Of(1000 * given[Inside])} mm)² / 4", area, "mm²"),
                .. cables.GroupBy(cable => cable).Select(group => new Headroom.Domain.Ledgers.WorkingStep(
                    Words.Count(group.Count(), "cable"), $"{group.Count()} · π · ({Words.Of(1000 * group.Key)} mm)² / 4", group.Count() * ConduitFill.AreaSquareMillimetres(1000 * group.Key), "mm²")),
                new("fill", $"{Words.Of(filled)} / {Words.Of(area)}", 100 * share, "%"),
            ])
        {
            Holds = fits,
            Notes = [$"40 % is a ceiling, not a comfortable pull: with bends, or more than 30 m between pull points, take fewer."],
        };
    }

    // One by one, as the limit itself changes with the number.
    private static int MoreOf(IReadOnlyList<double> cables, (double Filled, double All) area)
    {
        var one = ConduitFill.AreaSquareMillimetres(1000 * cables.Max());
        var more = 0;
        for (var next = 1; next <= SumRange.MostOfAList; next++)
        {
            if (ConduitFill.Fits(cables.Count + next, (area.Filled + next * one) / area.All))
                more = next;
            else if (cables.Count + next > 2)
                break;
        }

        return more;
    }
}

using Headroom.Domain.Quantities;
using Headroom.Engineering.Cabling;

namespace Headroom.Engineering.Sums.Cabling;

/// <summary>How many boxes of cable a list of runs takes.</summary>
internal static class BoxesOfCable
{
    private static readonly QuantityInput Runs = new("runs", "length of each run", Metres.Units, new(0.5, 5000, "m")) { IsList = true, ListExample = "12 x 31 m, 4 x 64 m" };
    private static readonly QuantityInput Waste = new("waste", "what is cut off beyond the measured lengths", Share.Units, new(0, 50, "%")) { Default = "10 %", DefaultWhy = "common practice, no source" };
    private static readonly QuantityInput Box = new("box", "cable in a box", Metres.Units, new(10, 5000, "m")) { Default = "304.8 m", DefaultWhy = "1000 ft (common practice, no source)" };

    private static readonly SumOutput Boxes = new("boxes", "", "boxes to buy");
    private static readonly SumOutput Cable = new("cable", "m", "cable that is cut");
    private static readonly SumOutput Over = new("left-over", "m", "left over in the boxes, in pieces");

    /// <summary>The sum.</summary>
    public static Sum Sum { get; } = new()
    {
        Name = "boxes-of-cable",
        Discipline = CablingSums.Discipline,
        Answers = "how many boxes of cable do these runs take?",
        Inputs = [Runs, Waste, Box],
        Outputs = [Boxes, Cable, Over],
        Formula = "each run with its waste is cut from one box: the longest first, from the first box that still holds it",
        Source = "first fit, longest first: at most a few boxes above the least there can be",
        Example = "runs 12 x 31 m, 4 x 64 m",
        Work = Work,
    };

    private static SumAnswer Work(SumGiven given)
    {
        double[] cut = [.. given.All(Runs).Select(metres => metres * (1 + given[Waste]))];
        var boxes = CableBoxes.Needed(cut, given[Box]);
        return new SumAnswer(
            $"{new Told(boxes, boxes == 1 ? "box" : "boxes")} of {new Told(given[Box], "m")}: {new Told(cut.Sum(), "m")} are cut from {(boxes == 1 ? "it" : "them")}.",
            [Boxes.Is(boxes), Cable.Is(cut.Sum()), Over.Is(boxes * given[Box] - cut.Sum())],
            [
                new("cable", $"{Words.Of(given.All(Runs).Sum())} m and {Words.Of(100 * given[Waste])} %", cut.Sum(), "m"),
                new("boxes", "no run joined from two remainders", boxes, ""),
            ])
        {
            Notes = cut.Any(metres => metres > given[Box]) ? [$"A run is longer than a box: it takes boxes by itself, or a reel."] : [],
        };
    }
}

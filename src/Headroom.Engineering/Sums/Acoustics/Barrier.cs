using Headroom.Domain.Quantities;
using Headroom.Engineering.Acoustics;

namespace Headroom.Engineering.Sums.Acoustics;

/// <summary>What an edge between source and ear takes away.</summary>
internal static class Barrier
{
    private static readonly QuantityInput ToEdge = new("to-edge", "from the source to the edge", Metres.Units, new(0.05, 50, "m"));
    private static readonly QuantityInput FromEdge = new("from-edge", "from the edge to the ear", Metres.Units, new(0.05, 50, "m"));
    private static readonly QuantityInput Straight = new("straight", "straight from the source to the ear", Metres.Units, new(0.05, 100, "m"));
    private static readonly QuantityInput Frequency = new("frequency", "of the sound", Hertz.Units, new(20, 20_000, "Hz")) { Default = "1000 Hz", DefaultWhy = "where small fans are loudest (common practice, no source)" };

    private static readonly SumOutput Loss = new("loss", "dB", "taken from what comes straight, by ISO 9613-2");
    private static readonly SumOutput Kurze = new("loss-kurze-anderson", "dB", "the same by Kurze and Anderson");
    private static readonly SumOutput Maekawa = new("loss-maekawa", "dB", "the same by the fit to Maekawa's chart");
    private static readonly SumOutput Longer = new("longer", "mm", "by how much the way round is longer");

    /// <summary>The sum.</summary>
    public static Sum Sum { get; } = new()
    {
        Name = "barrier",
        Discipline = AcousticSums.Discipline,
        Answers = "how much does an edge between source and ear take away?",
        Inputs = [ToEdge, FromEdge, Straight, Frequency],
        Outputs = [Loss, Kurze, Maekawa, Longer],
        Formula = "IL = 10 lg(3 + 10 N), N = 2 δ f / c, δ = to the edge + from the edge − straight; at most 20 dB",
        Source = "ISO 9613-2:1996, 7.4, indoors; Kurze and Anderson 1971; Maekawa 1968 (fit from memory)",
        Example = "to-edge 0.6 m from-edge 0.6 m straight 1.13 m",
        Work = Work,
    };

    private static SumAnswer Work(SumGiven given)
    {
        var difference = EdgeDiffraction.PathDifference(given[ToEdge], given[FromEdge], given[Straight]);
        if (difference < 0 || given[Straight] < Math.Abs(given[ToEdge] - given[FromEdge]))
        {
            return new SumAnswer(
                $"These three cannot be a triangle: the straight way is {new Told(given[Straight], "m")} and the way over the edge {new Told(given[ToEdge] + given[FromEdge], "m")}. Measure them again.",
                [Loss.Is(null), Kurze.Is(null), Maekawa.Is(null), Longer.Is(null)],
                []) { Holds = false };
        }

        var fresnel = EdgeDiffraction.Fresnel(difference, given[Frequency]);
        var loss = EdgeDiffraction.Standard(fresnel);
        return new SumAnswer(
            $"The edge takes {Told.Level(loss)} from what comes straight; what the room gives back stays.",
            [
                Loss.Is(loss), Kurze.Is(Math.Min(EdgeDiffraction.MostLoss, EdgeDiffraction.KurzeAnderson(fresnel))),
                Maekawa.Is(Math.Min(EdgeDiffraction.MostLoss, EdgeDiffraction.Maekawa(fresnel))), Longer.Is(1000 * difference),
            ],
            [
                new("δ", $"{Words.Of(given[ToEdge])} + {Words.Of(given[FromEdge])} − {Words.Of(given[Straight])} m", 1000 * difference, "mm"),
                new("N", $"2 · {Words.Of(1000 * difference)} mm · {Words.Of(given[Frequency])} Hz / {Words.Of(EdgeDiffraction.SoundSpeed)} m/s", fresnel, ""),
                new("IL", $"10 lg(3 + 10 · {Words.Of(fresnel)})", loss, "dB"),
            ])
        {
            Notes = [$"Under a desk in a room 2 to 6 dB are left of it at the seat (common practice, no source): never promise more."],
        };
    }
}

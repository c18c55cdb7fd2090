using Headroom.Engineering.Acoustics;
using static Headroom.Engineering.Sums.Acoustics.SourceInputs;

namespace Headroom.Engineering.Sums.Acoustics;

/// <summary>The noise rating of a spectrum, by the curves NC and NR.</summary>
internal static class NoiseRatingOf
{
    private static readonly SumOutput Nc = new("nc", "", "noise criterion NC");
    private static readonly SumOutput Nr = new("nr", "", "noise rating NR");
    private static readonly SumOutput A = new("a-level", "dB(A)", "A-weighted level of the spectrum");

    /// <summary>The sum.</summary>
    public static Sum Sum { get; } = new()
    {
        Name = "noise-rating",
        Discipline = AcousticSums.Discipline,
        Answers = "which NC and NR does an octave spectrum come to?",
        Inputs = [Bands],
        Outputs = [Nc, Nr, A],
        Formula = "NR of a band = (L − a) / b; NC: straight between the printed curves; the highest band counts",
        Source = "NR: ISO/R 1996:1971 (Kosten and van Os); NC: ANSI/ASA S12.2-2019, table 1, second-hand",
        Example = "bands 36, 39, 42, 44, 45, 43, 40, 34 dB",
        Work = given => Work(given.All(Bands)),
    };

    private static SumAnswer Work(IReadOnlyList<double> bands)
    {
        var (nc, nr) = (NoiseCriterion.Of(bands), NoiseRating.Of(bands));
        return new SumAnswer(
            $"NC {Whole(nc.Rating)}, set by the band of {Bands.Parts![nc.Band]}; NR {Whole(nr.Rating)}, set by that of {Bands.Parts![nr.Band]}.",
            [Nc.Is(nc.Rating), Nr.Is(nr.Rating), A.Is(Octaves.LevelA(bands))],
            [
                new("NC", $"{Words.Of(bands[nc.Band])} dB at {Bands.Parts![nc.Band]}, between the curves", nc.Rating, ""),
                new("NR", $"({Words.Of(bands[nr.Band])} − {Words.Of(NoiseRating.Offsets[nr.Band + 1])}) / {Words.Of(NoiseRating.Slopes[nr.Band + 1])}", nr.Rating, ""),
            ])
        {
            Notes = [$"A room is said to keep a curve when the rating, taken up to the next whole number, is no higher."],
        };
    }

    private static Told Whole(double rating) => new(Math.Ceiling(Math.Round(rating, 6)), "");
}

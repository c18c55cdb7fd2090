using Headroom.Domain.Quantities;
using Headroom.Engineering.Acoustics;

namespace Headroom.Engineering.Sums.Acoustics;

/// <summary>Takes the room out of a reading.</summary>
internal static class SourceAlone
{
    private static readonly QuantityInput Reading = new("reading", "level with the source running", SoundPressure.Units, new(0, 140, "dB(A)"));
    private static readonly QuantityInput Background = new("background", "level without it, at the same place", SoundPressure.Units, new(0, 140, "dB(A)"));

    private static readonly SumOutput Alone = new("source", "dB(A)", "level of the source alone");
    private static readonly SumOutput AtMost = new("at-most", "dB(A)", "what it is at most, where no more can be said");
    private static readonly SumOutput Above = new("above-background", "dB", "reading above the background");

    /// <summary>The sum.</summary>
    public static Sum Sum { get; } = new()
    {
        Name = "background-correction",
        Discipline = AcousticSums.Discipline,
        Answers = "how loud is a source by itself, when the room is in the reading?",
        Inputs = [Reading, Background],
        Outputs = [Alone, AtMost, Above],
        Formula = "L = L_reading + 10 lg(1 − 10^(−ΔL/10)) for ΔL from 3 to 15 dB; as read above; at most L_reading − 3 dB below",
        Source = "ISO 3744:2010, formula (16); limits: own rule on the survey grade of ISO 3746:2010",
        Example = "reading 48 dBA background 40 dBA",
        Work = given => Work(given[Reading], given[Background]),
    };

    private static SumAnswer Work(double reading, double background)
    {
        var (level, branch) = BackgroundCorrection.SourceAlone(reading, background);
        var above = new Headroom.Domain.Ledgers.WorkingStep("ΔL", $"{Words.Of(reading)} − {Words.Of(background)}", reading - background, "dB");
        return branch switch
        {
            BackgroundBranch.Contradicts => new SumAnswer(
                $"The two contradict each other: with the source it is quieter than without, {Told.Level(reading, "dB(A)")} and {Told.Level(background, "dB(A)")}. Take both again.",
                [Alone.Is(null), Above.Is(reading - background)],
                [above]) { Holds = false },
            BackgroundBranch.AtMost => new SumAnswer(
                $"No more can be said than that the source is at most {Told.Level(level!.Value, "dB(A)")}: it is too near the background.",
                [Alone.Is(null), AtMost.Is(level), Above.Is(reading - background)],
                [above, new("at most", $"{Words.Of(reading)} − {Words.Of(BackgroundCorrection.MostHeld)}", level, "dB(A)")]),
            _ => new SumAnswer(
                $"The source alone is {Told.Level(level!.Value, "dB(A)")}.",
                [Alone.Is(level), Above.Is(reading - background)],
                [above, new("K1", branch == BackgroundBranch.AsRead ? "15 dB or more above: nothing is taken off" : $"−10 lg(1 − 10^(−{Words.Of(reading - background)}/10))", reading - level!.Value, "dB"), new("L", $"{Words.Of(reading)} − {Words.Of(reading - level!.Value)}", level, "dB(A)")])
            {
                Notes = reading - background < 6 ? [$"So near the background a decibel of error in one reading becomes one and a half to two in the result."] : [],
            },
        };
    }
}

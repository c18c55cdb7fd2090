using Headroom.Domain.Quantities;
using Headroom.Engineering.Acoustics;

namespace Headroom.Engineering.Sums.Acoustics;

/// <summary>Puts a reading and a prediction of one level together, each weighed by how well it is known.</summary>
internal static class ReadingAndPrediction
{
    private static readonly QuantityInput Predicted = new("predicted", "level as worked out or declared", SoundPressure.Units, new(0, 140, "dB(A)"));
    private static readonly QuantityInput PredictedU = new("predicted-u", "its standard uncertainty (k = 1)", Decibels.Units, new(0.1, 20, "dB"));
    private static readonly QuantityInput Reading = new("reading", "level as read, the room taken out", SoundPressure.Units, new(0, 140, "dB(A)"));
    private static readonly QuantityInput ReadingU = new("reading-u", "its standard uncertainty (k = 1)", Decibels.Units, new(0.1, 20, "dB")) { Default = "1.6 dB", DefaultWhy = "a class 2 meter (ISO 9612:2009, table C.5, from memory) and 0.5 dB for the reading" };

    private static readonly SumOutput Combined = new("combined", "dB(A)", "both together");
    private static readonly SumOutput CombinedU = new("combined-u", "dB", "its standard uncertainty");
    private static readonly SumOutput Apart = new("apart", "", "how far apart, in joint standard uncertainties");

    /// <summary>The sum.</summary>
    public static Sum Sum { get; } = new()
    {
        Name = "reading-and-prediction",
        Discipline = AcousticSums.Discipline,
        Answers = "does a reading agree with what was expected, and what are both together?",
        Inputs = [Predicted, PredictedU, Reading, ReadingU],
        Outputs = [Combined, CombinedU, Apart],
        Formula = "z = (m2 − m1) / √(u1² + u2²); m = (w1 m1 + w2 m2) / (w1 + w2), w = 1 / u²; combined up to z = 2",
        Source = "ISO/IEC Guide 98-3; the limits 2 (common practice) and 3 (own rule)",
        Example = "predicted 44 dBA predicted-u 2.5 dB reading 47 dBA",
        Work = Work,
    };

    private static SumAnswer Work(SumGiven given)
    {
        var first = new Estimate(given[Predicted], given[PredictedU]);
        var second = new Estimate(given[Reading], given[ReadingU]);
        var apart = Precision.Apart(first, second);
        var joint = Precision.RootSum(first.Uncertainty, second.Uncertainty);
        var step = new Headroom.Domain.Ledgers.WorkingStep("z", $"({Words.Of(second.Value)} − {Words.Of(first.Value)}) / {Words.Of(joint)}", apart, "");
        if (Precision.Judge(apart) == Agreement.Agree)
        {
            var both = Precision.Combine(first, second);
            return new SumAnswer(
                $"They agree: together they are {Told.Level(both.Value, "dB(A)")} with a standard uncertainty of {Told.Level(both.Uncertainty)}.",
                [Combined.Is(both.Value), CombinedU.Is(both.Uncertainty), Apart.Is(apart)],
                [step, new("m", "weighed by 1 / u²", both.Value, "dB(A)"), new("u", $"1 / √(1/{Words.Of(first.Uncertainty)}² + 1/{Words.Of(second.Uncertainty)}²)", both.Uncertainty, "dB")]);
        }

        var doubtful = Precision.Judge(apart) == Agreement.Doubtful;
        return new SumAnswer(
            doubtful
                ? $"They lie too far apart to be combined: keep both, take a second reading, and until then go by the higher, {Told.Level(Math.Max(first.Value, second.Value), "dB(A)")}."
                : (FormattableString)$"They contradict each other and are not combined: look for the cause (place, speech in the reading, another fan state, a worn bearing).",
            [Combined.Is(null), CombinedU.Is(null), Apart.Is(apart)],
            [step]) { Holds = false };
    }
}

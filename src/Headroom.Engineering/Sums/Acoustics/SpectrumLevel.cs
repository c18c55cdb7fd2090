using Headroom.Engineering.Acoustics;
using static Headroom.Engineering.Sums.Acoustics.SourceInputs;

namespace Headroom.Engineering.Sums.Acoustics;

/// <summary>The single levels of a spectrum.</summary>
internal static class SpectrumLevel
{
    // Much more C than A: a hum that a fan does not make (common practice).
    private const double Hum = 10;

    private static readonly SumOutput A = new("a-level", "dB(A)", "A-weighted level");
    private static readonly SumOutput C = new("c-level", "dB", "C-weighted level");
    private static readonly SumOutput Z = new("z-level", "dB", "level without weighting");
    private static readonly SumOutput Speech = new("speech-interference", "dB", "mean of the bands of speech, 500 Hz to 4 kHz");

    /// <summary>The sum.</summary>
    public static Sum Sum { get; } = new()
    {
        Name = "spectrum-level",
        Discipline = AcousticSums.Discipline,
        Answers = "how many dB(A) does an octave spectrum have?",
        Inputs = [Bands],
        Outputs = [A, C, Z, Speech],
        Formula = "L_A = 10 lg Σ 10^((L_i + A_i) / 10)",
        Source = "IEC 61672-1:2013, the weights as its table has them, to a tenth",
        Example = "bands 36, 39, 42, 44, 45, 43, 40, 34 dB",
        Work = given => Work(given.All(Bands)),
    };

    private static SumAnswer Work(IReadOnlyList<double> bands)
    {
        var (a, c) = (Octaves.LevelA(bands), Octaves.LevelC(bands));
        return new SumAnswer(
            $"The spectrum is {Told.Level(a, "dB(A)")}.",
            [A.Is(a), C.Is(c), Z.Is(Octaves.LevelZ(bands)), Speech.Is(Octaves.SpeechInterference(bands))],
            [
                .. bands.Select((level, band) => new Headroom.Domain.Ledgers.WorkingStep($"{Bands.Parts![band]}", $"{Words.Of(level)} with its A weight", level + Octaves.AWeights[band], "dB")),
                new("L_A", "all together by their energy", a, "dB(A)"),
            ])
        {
            Notes = c - a > Hum ? [$"The C level lies {Told.Level(c - a)} above the A level: a low hum, which a fan does not make."] : [],
        };
    }
}

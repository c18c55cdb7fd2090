using Headroom.Domain.Quantities;
using Headroom.Engineering.Acoustics;

namespace Headroom.Engineering.Sums.Acoustics;

/// <summary>How loud several sources are together.</summary>
internal static class SumOfSources
{
    private static readonly QuantityInput Parts = new("levels", "level of each at the same place", SoundPressure.Units, new(-20, 140, "dB"))
    {
        IsList = true,
        ListExample = "2 x 41 dB, 37 dB",
    };

    private static readonly SumOutput Together = new("together", "dB", "level of all together");
    private static readonly SumOutput Above = new("above-loudest", "dB", "above the loudest alone");

    /// <summary>The sum.</summary>
    public static Sum Sum { get; } = new()
    {
        Name = "sum-of-sources",
        Discipline = AcousticSums.Discipline,
        Answers = "how loud are several sources together?",
        Inputs = [Parts],
        Outputs = [Together, Above],
        Formula = "L = 10 lg Σ 10^(L_i / 10)",
        Source = "incoherent sum, ISO 3744:2010, annex F",
        Example = "levels 2 x 41 dB, 37 dB, 33 dB",
        Work = given => Work(given.All(Parts)),
    };

    private static SumAnswer Work(IReadOnlyList<double> levels)
    {
        var sum = Levels.Together(levels)!.Value;
        var loudest = levels.Max();
        return new SumAnswer(
            $"Together they are {Told.Level(sum)}, {Told.Level(sum - loudest)} above the loudest.",
            [Together.Is(sum), Above.Is(sum - loudest)],
            [new("L", $"10 lg({string.Join(" + ", levels.Take(4).Select(level => $"10^{Words.Of(level / 10)}"))}{(levels.Count > 4 ? " + ..." : "")})", sum, "dB")])
        {
            Notes = [$"Levels add up by their energy: twice the same source is 3 dB more, not twice the number."],
        };
    }
}

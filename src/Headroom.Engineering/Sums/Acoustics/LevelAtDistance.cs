using Headroom.Domain.Quantities;
using Headroom.Engineering.Acoustics;
using static Headroom.Engineering.Sums.Acoustics.SourceInputs;

namespace Headroom.Engineering.Sums.Acoustics;

/// <summary>How loud a source is at a distance, without a room round it.</summary>
internal static class LevelAtDistance
{
    // Closer than twice the size of a shelf-wide device the formula of a point is no use.
    private const double NearMetres = 0.9;

    private static readonly QuantityInput Wanted = new("wanted", "a level, to see from how far away it is kept", SoundPressure.Units, new(0, 120, "dB(A)")) { IsOptional = true };

    private static readonly SumOutput Level = new("level", "dB(A)", "level at the ear");
    private static readonly SumOutput From = new("from", "m", "distance from which the wanted level is kept");

    /// <summary>The sum.</summary>
    public static Sum Sum { get; } = new()
    {
        Name = "level-at-distance",
        Discipline = AcousticSums.Discipline,
        Answers = "how loud is a source at a distance, in the open or very near?",
        Inputs = [SourceInputs.Source, Distance, On, Wanted],
        Outputs = [Level, From],
        Formula = "Lp = LW + 10 lg(Q / (4 π r²)); Q is 1 free, 2 on a plane, 4 at an edge, 8 in a corner",
        Source = "ISO 3744 and ISO 11203, small source",
        Example = "power 49 dBA distance 1.5 m on plane",
        Work = Work,
    };

    private static SumAnswer Work(SumGiven given)
    {
        var (power, metres, q) = (given[SourceInputs.Source], given[Distance], Directivity(given));
        var change = PointSource.LevelLessPower(q, metres);
        var figures = new List<SumFigure> { Level.Is(power + change) };
        if (given.Maybe(Wanted) is { } wanted)
            figures.Add(From.Is(PointSource.Metres(power, q, wanted)));
        return new SumAnswer(
            $"It is {Told.Level(power + change, "dB(A)")} at {new Told(metres, "m")}, without what a room gives back.",
            figures,
            [
                new("distance and planes", $"10 lg({Words.Of(q)} / (4 π · {Words.Of(metres)}²))", change, "dB"),
                new("Lp", $"{Words.Of(power)} {(change < 0 ? "−" : "+")} {Words.Of(Math.Abs(change))}", power + change, "dB(A)"),
            ])
        {
            Notes = metres < NearMetres
                ? [$"So near a device as wide as a rack is no point: beside its outlet it is quieter than this says."]
                : [$"In a room it is louder: 'headroom reckon room-level' adds what the room gives back."],
        };
    }
}

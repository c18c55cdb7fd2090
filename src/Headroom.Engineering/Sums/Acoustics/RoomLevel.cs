using Headroom.Domain.Quantities;
using Headroom.Engineering.Acoustics;
using static Headroom.Engineering.Sums.Acoustics.SourceInputs;

namespace Headroom.Engineering.Sums.Acoustics;

/// <summary>How loud a source is in a room: what comes straight and what the room gives back.</summary>
internal static class RoomLevel
{
    private static readonly QuantityInput Length = new("length", "length of the room", Metres.Units, new(0.5, 200, "m"));
    private static readonly QuantityInput Width = new("width", "width of the room", Metres.Units, new(0.5, 200, "m"));
    private static readonly QuantityInput Height = new("height", "height of the room", Metres.Units, new(0.5, 30, "m"));

    private static readonly QuantityInput Reverberation = new("reverberation", "how long the room rings, T60", Seconds.Units, new(0.1, 10, "s"))
    {
        Default = "0.5 s",
        DefaultWhy = "a furnished office (common practice, no source)",
    };

    private static readonly QuantityInput Absorption = new("absorption", "its absorption area, where that is known better than how it rings", SquareMetres.Units, new(0.1, 20_000, "m2")) { IsOptional = true };

    private static readonly SumOutput Level = new("level", "dB(A)", "level at the ear");
    private static readonly SumOutput Direct = new("direct", "dB(A)", "what comes straight");
    private static readonly SumOutput Given = new("given-back", "dB(A)", "what the room gives back, everywhere in it");
    private static readonly SumOutput Critical = new("critical-distance", "m", "where the two are alike");

    /// <summary>The sum.</summary>
    public static Sum Sum { get; } = new()
    {
        Name = "room-level",
        Discipline = AcousticSums.Discipline,
        Answers = "how loud is a source in a room?",
        Inputs = [SourceInputs.Source, Distance, Length, Width, Height, Reverberation, Absorption, On],
        Outputs = [Level, Direct, Given, Critical],
        Formula = "Lp = LW + 10 lg(Q / (4 π r²) + 4 / R), R = A / (1 − A / S), A = 0.161 V / T",
        Source = "diffuse-field theory; Sabine; room constant: Beranek, from memory; ± 2 dB in rooms like a box",
        Example = "power 49 dBA distance 1.5 m length 4 m width 3 m height 2.5 m",
        Work = Work,
    };

    private static SumAnswer Work(SumGiven given)
    {
        var (volume, surface) = Box(given[Length], given[Width], given[Height]);
        var absorption = given.Maybe(Absorption) ?? RoomAcoustics.Absorption(volume, given[Reverberation]);
        if (absorption >= surface)
        {
            return new SumAnswer(
                $"No room of {new Told(surface, "m²")} of walls, floor and ceiling absorbs as much as {new Told(absorption, "m²")}: measure how long it rings again.",
                [Level.Is(null), Direct.Is(null), Given.Is(null), Critical.Is(null)],
                []) { Holds = false };
        }

        var constant = RoomAcoustics.Constant(absorption, surface);
        var (power, metres, q) = (given[SourceInputs.Source], given[Distance], Directivity(given));
        var direct = power + PointSource.LevelLessPower(q, metres);
        var back = power + RoomAcoustics.ReverberantLessPower(constant);
        var level = power + RoomAcoustics.LevelLessPower(q, metres, constant);
        return new SumAnswer(
            $"It is {Told.Level(level, "dB(A)")} at {new Told(metres, "m")}: {Told.Level(direct, "dB(A)")} come straight, {Told.Level(back, "dB(A)")} from the room.",
            [Level.Is(level), Direct.Is(direct), Given.Is(back), Critical.Is(RoomAcoustics.CriticalMetres(q, constant))],
            [
                new("A", given.Maybe(Absorption) is null ? $"0.161 · {Words.Of(volume)} m³ / {Words.Of(given[Reverberation])} s" : "given", absorption, "m²"),
                new("R", $"{Words.Of(absorption)} / (1 − {Words.Of(absorption)} / {Words.Of(surface)})", constant, "m²"),
                new("direct", $"{Words.Of(power)} + 10 lg({Words.Of(q)} / (4 π · {Words.Of(metres)}²))", direct, "dB(A)"),
                new("given back", $"{Words.Of(power)} + 10 lg(4 / {Words.Of(constant)})", back, "dB(A)"),
                new("Lp", "both together", level, "dB(A)"),
            ])
        {
            Notes = [$"Beyond the critical distance it does not grow quieter by going further away, only by what absorbs."],
        };
    }

    private static (double Volume, double Surface) Box(double length, double width, double height) =>
        (length * width * height, 2 * (length * width + (length + width) * height));
}

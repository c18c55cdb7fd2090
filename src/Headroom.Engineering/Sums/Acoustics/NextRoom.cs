using Headroom.Domain.Quantities;
using Headroom.Engineering.Acoustics;

namespace Headroom.Engineering.Sums.Acoustics;

/// <summary>How loud it is in the next room.</summary>
internal static class NextRoom
{
    private static readonly QuantityInput Level = new("level", "level in the room with the source, away from it", SoundPressure.Units, new(0, 120, "dB(A)"));
    private static readonly QuantityInput Wall = new("wall", "sound reduction of the wall between", Decibels.Units, new(0, 80, "dB"));
    private static readonly QuantityInput WallArea = new("wall-area", "area of the wall without door and gap", SquareMetres.Units, new(0.1, 500, "m2"));
    private static readonly QuantityInput Door = new("door", "sound reduction of a door in it", Decibels.Units, new(0, 60, "dB")) { IsOptional = true };
    private static readonly QuantityInput DoorArea = new("door-area", "area of the door", SquareMetres.Units, new(0.1, 20, "m2")) { Default = "1.8 m2", DefaultWhy = "a door of 0.9 by 2 m; counted only with a door" };
    private static readonly QuantityInput Gap = new("gap", "open area: under the door, round a duct", SquareMetres.Units, new(0, 50_000, "cm2")) { Default = "0 cm2", DefaultWhy = "no gap is taken; there mostly is one" };
    private static readonly QuantityInput Absorption = new("absorption", "absorption area of the next room", SquareMetres.Units, new(0.1, 5000, "m2"));

    private static readonly SumOutput There = new("level-there", "dB(A)", "level in the next room");
    private static readonly SumOutput Reduction = new("reduction", "dB", "sound reduction of all that lies between");

    /// <summary>The sum.</summary>
    public static Sum Sum { get; } = new()
    {
        Name = "next-room",
        Discipline = AcousticSums.Discipline,
        Answers = "how loud is it behind a wall?",
        Inputs = [Level, Wall, WallArea, Door, DoorArea, Gap, Absorption],
        Outputs = [There, Reduction],
        Formula = "L2 = L1 − R + 10 lg(S / A2), R = −10 lg(Σ S_i 10^(−R_i/10) / Σ S_i)",
        Source = "ISO 16283-1 and ISO 12354-1; a gap lets everything through",
        Example = "level 53 dBA wall 38 dB wall-area 8 m2 absorption 16 m2",
        Work = Work,
    };

    private static SumAnswer Work(SumGiven given)
    {
        var parts = new List<WallPart> { new(given[WallArea], given[Wall]), new(given[Gap], 0) };
        if (given.Maybe(Door) is { } door)
            parts.Add(new(given[DoorArea], door));
        var area = parts.Sum(part => part.SquareMetres);
        var reduction = Enclosures.Composite([.. parts]);
        var change = Enclosures.NextRoomLessThis(reduction, area, given[Absorption]);
        var there = given[Level] + change;
        return new SumAnswer(
            $"In the next room it is {Told.Level(there, "dB(A)")}; what lies between keeps {Told.Level(reduction)}.",
            [There.Is(there), Reduction.Is(reduction)],
            [
                new("R", $"of {Words.Of(area)} m² in {Words.Count(parts.Count(part => part.SquareMetres > 0), "part")}, weighed by what each lets through", reduction, "dB"),
                new("into that room", $"10 lg({Words.Of(area)} / {Words.Of(given[Absorption])})", change + reduction, "dB"),
                new("L2", $"{Words.Of(given[Level])} − {Words.Of(reduction)} {(change + reduction < 0 ? "−" : "+")} {Words.Of(Math.Abs(change + reduction))}", there, "dB(A)"),
            ])
        {
            Notes = [$"A hung ceiling with a common void above it, or a duct, can let through more than the whole wall."],
        };
    }
}

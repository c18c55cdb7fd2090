using Headroom.Domain.Quantities;
using Headroom.Engineering.Heat;
using static Headroom.Engineering.Sums.Heat.HeatSumInputs;

namespace Headroom.Engineering.Sums.Heat;

/// <summary>How warm a cupboard grows, closed or with vents.</summary>
internal static class CupboardRise
{
    private static readonly QuantityInput Faces = new("faces", "area of the faces that touch cooler air", SquareMetres.Units, new(0, 100, "m2"));
    private static readonly WordInput Walls = new("walls", "what they are made of", "board", "plasterboard", "steel", "glass", "brick") { Default = "board", DefaultWhy = "18 mm of chipboard" };
    private static readonly QuantityInput Vent = new("vent", "free area of each of a low and a high vent", SquareMetres.Units, new(0, 20_000, "cm2")) { Default = "0 cm2", DefaultWhy = "closed" };
    private static readonly QuantityInput Apart = new("apart", "height between the middles of the vents", Metres.Units, new(0, 10, "m")) { Default = "0.6 m", DefaultWhy = "a small cabinet; counted only with vents" };

    private static readonly SumOutput Kelvins = new("rise", "K", "warmer than the air around");
    private static readonly SumOutput Inside = new("inside", "°C", "air inside");
    private static readonly SumOutput Roof = new("under-roof", "°C", "air under its roof, about");
    private static readonly SumOutput Moved = new("air-through-vents", "m3/h", "air that the warmth itself moves");

    /// <summary>The sum.</summary>
    public static Sum Sum { get; } = new()
    {
        Name = "cupboard-rise",
        Discipline = HeatSums.Discipline,
        Answers = "how warm does a cupboard with equipment in it get?",
        Inputs = [Warmth, Faces, Walls, Vent, Apart, Around],
        Outputs = [Kelvins, Inside, Roof, Moved],
        Formula = "P = ρ c V ΔT + U A ΔT, V = 0.6 A* √(2 g h ΔT / Ti), 1/A*² = 1/A1² + 1/A2²",
        Source = "balance of heat; walls by ISO 6946 in its order, stack effect with Cd 0.6, from memory; good to about a third",
        Example = "heat 48 W faces 2.4 m2 vent 60 cm2",
        Work = Work,
    };

    private static SumAnswer Work(SumGiven given)
    {
        var (coefficient, how) = WallTable.Of(given.Word(Walls))!.Value;
        var faces = coefficient * given[Faces];
        var vents = given[Vent] > 0 ? Vents.Together(given[Vent], given[Vent]) : 0;
        if (Vents.Rise(given[Warmth], (vents, given[Apart]), faces, given[Around]) is not { } rise)
        {
            return new SumAnswer($"With neither faces nor vents there is no end to it: the air inside grows warmer until something fails.", [Kelvins.Is(null), Inside.Is(null)], [new("what leaves", "nothing", 0, "W/K")]) { Holds = false };
        }

        var inside = given[Around] + rise;
        var moved = SecondsPerHour * Vents.Flow(vents, given[Apart], rise, given[Around]);
        return new SumAnswer(
            $"It settles {new Told(Math.Round(rise, 2), "K")} above the air around it, at {new Told(Math.Round(inside, 1), "°C")}.",
            [Kelvins.Is(rise), Inside.Is(inside), Roof.Is(given[Around] + 1.4 * rise), Moved.Is(moved)],
            [
                new("U", how, coefficient, "W/(m²·K)"),
                new("through the faces", $"{Words.Of(coefficient)} · {Words.Of(given[Faces])}", faces, "W/K"),
                new("both vents as one", "1 / √(1/A1² + 1/A2²)", 1e4 * vents, "cm²"),
                new("rise", "where what leaves is what is left inside", rise, "K"),
            ])
        {
            Notes = [$"Under the roof it is a third to a half more (common practice, no source): that is where switches mostly hang.", .. vents > 0 ? (FormattableString[])[$"A louvre or mesh leaves 0.4 to 0.6 of its hole free; a gap under a door alone is no vent."] : []],
            Cautions = vents > 0 ? [CautionTable.CutVents] : [],
        };
    }
}

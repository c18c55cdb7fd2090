using Headroom.Domain.Quantities;
using Headroom.Engineering.Airflow;
using Headroom.Engineering.Heat;
using static Headroom.Engineering.Sums.Heat.HeatSumInputs;

namespace Headroom.Engineering.Sums.Heat;

/// <summary>What a grille in front of a fan costs.</summary>
internal static class GrilleOpened
{
    private static readonly QuantityInput OwnFlows = Flows("flows", "flows of the fan's curve, from none to free air");
    private static readonly QuantityInput OwnPressures = Pressures("pressures", "pressures of that curve");
    private static readonly QuantityInput Moves = new("moves", "air it moves with the grille", CubicMetresPerHour.Units, new(0.1, 5000, "m3/h"));
    private static readonly QuantityInput FreeShare = new("free", "free area of the grille", Share.Units, new(5, 100, "%"));
    private static readonly QuantityInput Opening = new("opening", "diameter of the opening", Metres.Units, new(10, 500, "mm")) { Default = "38 mm", DefaultWhy = "a fan of 40 mm" };

    private static readonly SumOutput Without = new("flow-without", "m3/h", "air without the grille, at the same speed");
    private static readonly SumOutput Gain = new("flow-gain", "%", "more air");
    private static readonly SumOutput Speed = new("speed-for-old-flow", "%", "speed that holds the old flow");
    private static readonly SumOutput Change = new("level-change", "dB", "change of its level then");

    /// <summary>The sum.</summary>
    public static Sum Sum { get; } = new()
    {
        Name = "grille-opened",
        Discipline = HeatSums.Discipline,
        Answers = "what would a more open grille in front of a fan bring?",
        Inputs = [OwnFlows, OwnPressures, Moves, FreeShare, Opening],
        Outputs = [Without, Gain, Speed, Change],
        Formula = "ζ = (0.707 √(1 − f) + 1 − f)² / f²; k = fan(q) / q² − ζ ρ / (2 A²); ΔL = 50 lg of the speed",
        Source = "Idelchik, diagram 8-1, from memory, ± 30 % in small grilles; affinity laws; fan sound law",
        Example = "flows 0, 5, 10, 15 m3/h pressures 70, 52, 24, 0 Pa moves 8 m3/h free 50 %",
        Work = Work,
    };

    private static SumAnswer Work(SumGiven given)
    {
        if (Curve(given.All(OwnFlows), given.All(OwnPressures)) is not { } curve)
            return Cannot($"A curve has as many flows as pressures, its flows rise and its pressures never do: one that rises is refused.");
        var zeta = Grille.Coefficient(given[FreeShare]);
        var grille = Grille.Resistance(zeta, Math.PI * given[Opening] * given[Opening] / 4, Air.Usual);
        if (AirPath.ResistanceOf(curve, given[Moves] / SecondsPerHour) is not { } whole || whole < grille)
            return Cannot($"The grille alone takes more than the fan gives at {new Told(given[Moves], "m3/h")}: one of the figures is wrong.");
        var with = given[Moves];
        var without = AirPath.Meet(curve, whole - grille).Flow * SecondsPerHour;
        var speed = with / without;
        var change = FanLaws.LevelChange(speed);
        return new SumAnswer(
            $"Without it {new Told(without, "m3/h")} move at the same speed; slowed down to the old flow it is {Told.Level(Math.Abs(change))} quieter.",
            [Without.Is(without), Gain.Is(100 * (without / with - 1)), Speed.Is(100 * speed), Change.Is(change)],
            [
                new("ζ", $"of {Words.Of(100 * given[FreeShare])} % free area", zeta, ""),
                new("share of the grille in the whole path", "its k over that of all", whole > 0 ? 100 * grille / whole : 0, "%"),
                new("speed for the old flow", $"{Words.Of(with)} / {Words.Of(without)}", 100 * speed, "%"),
            ])
        {
            Notes = [$"It is quieter only if the switch slows its fan down; a guard that is cut out leaves moving blades within reach and ends the approval."],
            Cautions = [CautionTable.OpenCase],
        };
    }

    private static SumAnswer Cannot(FormattableString why) => new(why, [Without.Is(null), Change.Is(null)], [new("curve or path", "cannot be", null, "")]) { Holds = false };
}

using Headroom.Domain.Quantities;
using Headroom.Engineering.Airflow;
using static Headroom.Engineering.Sums.Heat.HeatSumInputs;

namespace Headroom.Engineering.Sums.Heat;

/// <summary>What another fan moves through the same case.</summary>
internal static class FanSwap
{
    private static readonly QuantityInput OwnFlows = Flows("own-flows", "flows of the curve of the fan in it, from none to free air");
    private static readonly QuantityInput OwnPressures = Pressures("own-pressures", "pressures of that curve");
    private static readonly QuantityInput NewFlows = Flows("new-flows", "flows of the curve of the new fan");
    private static readonly QuantityInput NewPressures = Pressures("new-pressures", "pressures of that curve");
    private static readonly QuantityInput Moves = new("moves", "air that the fan in it moves through the case", CubicMetresPerHour.Units, new(0.1, 5000, "m3/h"));

    private static readonly SumOutput There = new("new-flow", "m3/h", "air the new fan moves there");
    private static readonly SumOutput Of = new("flow-share", "%", "of what it is now");
    private static readonly SumOutput Speed = new("speed-for-old-flow", "%", "speed at which the new fan holds the old flow");
    private static readonly SumOutput Warmer = new("rise-share", "%", "rise of the air of what it is now");

    /// <summary>The sum.</summary>
    public static Sum Sum { get; } = new()
    {
        Name = "fan-swap",
        Discipline = HeatSums.Discipline,
        Answers = "how much air is left when a fan is changed for another?",
        Inputs = [OwnFlows, OwnPressures, Moves, NewFlows, NewPressures],
        Outputs = [There, Of, Speed, Warmer],
        Formula = "k = fan(q) / q² with the fan in it; the new one meets the path where its curve is k q²",
        Source = "fan curves straight between points; affinity laws of fans",
        Example = "own-flows 0, 6, 12, 17 m3/h own-pressures 80, 58, 29, 0 Pa moves 9 m3/h new-flows 0, 4, 8, 11 m3/h new-pressures 30, 20, 8, 0 Pa",
        Work = Work,
    };

    private static SumAnswer Work(SumGiven given)
    {
        if (Curve(given.All(OwnFlows), given.All(OwnPressures)) is not { } own || Curve(given.All(NewFlows), given.All(NewPressures)) is not { } put)
            return Cannot($"A curve has as many flows as pressures, its flows rise and its pressures never do: one that rises is refused.");
        if (AirPath.ResistanceOf(own, given[Moves] / SecondsPerHour) is not { } path)
            return Cannot($"The fan in it moves {new Told(given[Moves], "m3/h")} at no pressure at all: look at the curve again.");
        var flow = AirPath.Meet(put, path).Flow;
        var share = flow * SecondsPerHour / given[Moves];
        if (share <= 0)
            return Cannot($"The new fan moves nothing through that path.");
        return new SumAnswer(
            $"The new fan moves {new Told(flow * SecondsPerHour, "m3/h")} through the same case, {new Told(Math.Round(100 * share), "%")} of what it is now.",
            [There.Is(flow * SecondsPerHour), Of.Is(100 * share), Speed.Is(100 / share), Warmer.Is(100 / share)],
            [new("k", "its pressure there over flow²", path / (SecondsPerHour * SecondsPerHour), "Pa·h²/m6"), new("new flow", "where the new curve is k q²", flow * SecondsPerHour, "m3/h")])
        {
            Notes = share < 1 ? [$"A switch that watches its temperature then runs the new fan faster, and the quiet is gone; one whose fan reports too slowly alarms."] : [],
            Cautions = [CautionTable.OpenCase],
        };
    }

    private static SumAnswer Cannot(FormattableString why) => new(why, [There.Is(null), Of.Is(null)], [new("curve or path", "cannot be", null, "")]) { Holds = false };
}

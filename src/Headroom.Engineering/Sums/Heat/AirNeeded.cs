using Headroom.Engineering.Heat;
using static Headroom.Engineering.Sums.Heat.HeatSumInputs;

namespace Headroom.Engineering.Sums.Heat;

/// <summary>How much air carries heat away.</summary>
internal static class AirNeeded
{
    private static readonly SumOutput Flow = new("flow", "m3/h", "air at the working point");
    private static readonly SumOutput Printed = new("printed-on-fan", "m3/h", "free-air figure to look for on a fan, about");
    private static readonly SumOutput Btu = new("cooling", "BTU/h", "the same heat on a cooling sheet");

    /// <summary>The sum.</summary>
    public static Sum Sum { get; } = new()
    {
        Name = "air-needed",
        Discipline = HeatSums.Discipline,
        Answers = "how much air must a fan move to carry heat away?",
        Inputs = [Warmth, Rise, Around, Altitude],
        Outputs = [Flow, Printed, Btu],
        Formula = "V = P / (ρ c ΔT); ρ by height and temperature",
        Source = "balance of heat; ISO 2533, from memory",
        Example = "heat 130 W rise 7 K",
        Work = Work,
    };

    private static SumAnswer Work(SumGiven given)
    {
        var density = Air.Density(given[Around], given[Altitude]);
        var flow = SecondsPerHour * Air.FlowFor(given[Warmth], given[Rise], density);
        return new SumAnswer(
            $"{new Told(flow, "m3/h")} of air carry it away, at the pressure of what the air goes through.",
            [Flow.Is(flow), Printed.Is(2 * flow), Btu.Is(Engineering.Power.SupplyLosses.BtuPerHour(given[Warmth]))],
            [new("density", "p / (287.05 T)", density, "kg/m³"), new("flow", $"{Words.Of(given[Warmth])} / (ρ · 1006 · {Words.Of(given[Rise])})", flow, "m3/h")])
        {
            Notes = [$"What is printed on a fan holds for free air: with grille and filter count on half (common practice, no source)."],
        };
    }
}

using Headroom.Domain.Quantities;
using Headroom.Engineering.Heat;
using static Headroom.Engineering.Sums.Heat.HeatSumInputs;

namespace Headroom.Engineering.Sums.Heat;

/// <summary>How warm the air leaves a device, and what comes back to its inlet.</summary>
internal static class OutletRise
{
    private static readonly QuantityInput Flow = new("flow", "air it moves", CubicMetresPerHour.Units, new(0.1, 5000, "m3/h"));
    private static readonly QuantityInput Back = new("back", "share of its own air that comes back to its inlet", Share.Units, new(0, 90, "%")) { Default = "20 %", DefaultWhy = "a rack without panels; free on a desk 5 % (common practice, no source)" };

    private static readonly SumOutput Kelvins = new("rise", "K", "air leaves it warmer by");
    private static readonly SumOutput Inlet = new("inlet", "°C", "air at its inlet");
    private static readonly SumOutput Outlet = new("outlet", "°C", "air at its outlet");

    /// <summary>The sum.</summary>
    public static Sum Sum { get; } = new()
    {
        Name = "outlet-rise",
        Discipline = HeatSums.Discipline,
        Answers = "how warm does the air leave a switch, and what does it draw in again?",
        Inputs = [Warmth, Flow, Back, Around],
        Outputs = [Kelvins, Inlet, Outlet],
        Formula = "ΔT = P / (ρ c V); inlet = around + f / (1 − f) ΔT; ρ c = 1211.3 J/(m³·K) at 20 °C",
        Source = "balance of heat",
        Example = "heat 33 W flow 12 m3/h",
        Work = Work,
    };

    private static SumAnswer Work(SumGiven given)
    {
        var rise = Air.Rise(given[Warmth], given[Flow] / SecondsPerHour);
        var inlet = given[Around] + Air.Returned(given[Back], rise);
        return new SumAnswer(
            $"The air leaves it {new Told(Math.Round(rise, 2), "K")} warmer; its inlet gets {new Told(Math.Round(inlet, 1), "°C")}.",
            [Kelvins.Is(rise), Inlet.Is(inlet), Outlet.Is(inlet + rise)],
            [
                new("rise", $"{Words.Of(given[Warmth])} W / (1211.3 · V)", rise, "K"),
                new("what comes back", "f / (1 − f) · that", Air.Returned(given[Back], rise), "K"),
            ])
        {
            Notes = [$"A rating holds for the air at the inlet, not for that of the room."],
        };
    }
}

using Headroom.Domain.Quantities;
using Headroom.Engineering.Standby;

namespace Headroom.Engineering.Sums.Standby;

/// <summary>How long a lithium iron phosphate battery holds a load.</summary>
internal static class LithiumMinutes
{
    private static readonly QuantityInput Volts = new("volts", "nominal: 12.8, 25.6 or 51.2 V", Domain.Quantities.Volts.Units, new(3, 800, "V"));
    private static readonly QuantityInput Capacity = new("capacity", "nominal", AmpereHours.Units, new(0.5, 5000, "Ah"));
    private static readonly QuantityInput Load = new("load", "at the terminals of the battery", Watts.Units, new(1, 50_000, "W"));
    private static readonly QuantityInput Usable = new("usable", "share of its energy that may be used, age and cold included", Share.Units, new(10, 100, "%")) { Default = "90 %", DefaultWhy = "usual depth, from memory" };

    private static readonly SumOutput Minutes = new("minutes", "min", "how long it holds");

    /// <summary>The sum.</summary>
    public static Sum Sum { get; } = new()
    {
        Name = "lithium-minutes",
        Discipline = StandbySums.Discipline,
        Answers = "how long does a lithium iron phosphate battery hold a load?",
        Inputs = [Volts, Capacity, Load, Usable],
        Outputs = [Minutes],
        Formula = "T = V · Ah · usable / P",
        Source = "energy over power; its capacity hardly depends on the current",
        Example = "volts 12.8 V capacity 11.4 Ah load 73 W",
        Work = given =>
        {
            var minutes = LithiumRuntime.Seconds(given[Volts], given[Capacity], given[Usable], given[Load]) / 60;
            return new SumAnswer($"It holds {new Told(minutes, "min")}.", [Minutes.Is(minutes)],
                [new("T", $"{Words.Of(given[Volts])} V · {Words.Of(given[Capacity])} Ah · {Words.Of(given[Usable])} / {Words.Of(given[Load])} W", minutes, "min")])
            {
                Notes = [$"Its protection switches off above a current of its own, at once; it must not be charged below freezing."],
            };
        },
    };
}

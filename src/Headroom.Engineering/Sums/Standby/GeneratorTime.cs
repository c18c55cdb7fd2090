using Headroom.Domain.Quantities;
using Headroom.Engineering.Standby;

namespace Headroom.Engineering.Sums.Standby;

/// <summary>How long a generator runs on a tank.</summary>
internal static class GeneratorTime
{
    private static readonly UnitTable Volume = new("a volume", [new Unit("L", 1, 0, "l", "litres", "litre"), new Unit("gal", 3.785411784)]);
    private static readonly UnitTable Burning = new("a rate of fuel", [new Unit("L/kWh", 1)]);

    private static readonly QuantityInput Tank = new("tank", "fuel that can be used", Volume, new(0.1, 10_000, "L"));
    private static readonly QuantityInput Burns = new("burns", "fuel for each kilowatt-hour at this load", Burning, new(0.1, 3, "L/kWh"));
    private static readonly QuantityInput Load = new("load", "on the generator", Watts.Units, new(10, 200_000, "W"));

    private static readonly SumOutput Hours = new("hours", "h", "how long it runs");

    /// <summary>The sum.</summary>
    public static Sum Sum { get; } = new()
    {
        Name = "generator-time",
        Discipline = StandbySums.Discipline,
        Answers = "how long does a generator run on a tank?",
        Inputs = [Tank, Burns, Load],
        Outputs = [Hours],
        Formula = "t = tank / (burns · P)",
        Source = "balance of fuel",
        Example = "tank 11 L burns 0.48 L/kWh load 620 W",
        Work = given =>
        {
            var hours = Generator.Hours(given[Tank], given[Burns], given[Load]);
            return new SumAnswer($"It runs {new Told(hours, "h")}.", [Hours.Is(hours)],
                [new("t", $"{Words.Of(given[Tank])} L / ({Words.Of(given[Burns])} L/kWh · {Words.Of(given[Load])} W)", hours, "h")])
            {
                Notes =
                [
                    $"At part load it burns more for each kilowatt-hour: read the tank after an hour.",
                    $"A generator runs outdoors only, and is joined to a building's wiring by a licensed person through a change-over switch.",
                ],
            };
        },
    };
}

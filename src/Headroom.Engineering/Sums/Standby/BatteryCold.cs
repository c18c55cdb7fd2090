using Headroom.Domain.Quantities;
using Headroom.Engineering.Standby;

namespace Headroom.Engineering.Sums.Standby;

/// <summary>What cold takes from a lead battery, and what warmth takes from its life.</summary>
internal static class BatteryCold
{
    private static readonly QuantityInput Temperature = new("temperature", "of the battery", Celsius.Units, new(-3.8, 48.8, "°C"));

    private static readonly SumOutput Factor = new("factor", "", "by which the load counts for more");
    private static readonly SumOutput Life = new("life", "%", "of its design life on float");

    /// <summary>The sum.</summary>
    public static Sum Sum { get; } = new()
    {
        Name = "battery-temperature",
        Discipline = StandbySums.Discipline,
        Answers = "what do cold and warmth take from a lead battery?",
        Inputs = [Temperature],
        Outputs = [Factor, Life],
        Formula = "K_cold from a table in °F, never below 1; life halves for 8.33 K above 25 °C",
        Source = "IEEE Std 485, Table 1, from memory; life: an education page on heat and loading",
        Example = "temperature 9 °C",
        Work = given =>
        {
            var factor = BatteryDerating.LeadTemperature(given[Temperature]) ?? 1;
            var life = BatteryDerating.FloatLife(given[Temperature]) * 100;
            return new SumAnswer($"A load counts {new Told(factor, "")} times what it is, and the battery reaches {new Told(life, "%")} of its life.", [Factor.Is(factor), Life.Is(life)],
            [
                new("K_cold", $"between the rows of the table at {Words.Of(given[Temperature])} °C", factor, ""),
                new("life", "0.5^((t − 25) / 8.33) above 25 °C", life, "%"),
            ]) { Notes = [$"Capacity tests use another table of the same letter, below 1 when cold: do not mix the two."] };
        },
    };
}

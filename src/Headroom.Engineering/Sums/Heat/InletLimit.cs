using Headroom.Domain.Quantities;
using Headroom.Engineering.Heat;

namespace Headroom.Engineering.Sums.Heat;

/// <summary>How warm the air at an inlet may be at a height.</summary>
internal static class InletLimit
{
    private static readonly QuantityInput Rated = new("rated", "warmest air it is rated for at the sea", Celsius.Units, new(20, 80, "°C"));
    private static readonly QuantityInput Height = new("altitude", "height above the sea", Metres.Units, new(0, 5000, "m"));
    private static readonly QuantityInput Per = new("per-kelvin", "height above 900 m that takes a kelvin off", Metres.Units, new(50, 1000, "m")) { Default = "300 m", DefaultWhy = "equipment for offices; 175 and 125 m for the classes rated for 40 and 45 °C" };

    private static readonly SumOutput Most = new("limit", "°C", "warmest air there");
    private static readonly SumOutput Flow = new("air", "%", "air wanted for the same rise, of that at the sea");

    /// <summary>The sum.</summary>
    public static Sum Sum { get; } = new()
    {
        Name = "inlet-limit",
        Discipline = HeatSums.Discipline,
        Answers = "how warm may the air at an inlet be high above the sea?",
        Inputs = [Rated, Height, Per],
        Outputs = [Most, Flow],
        Formula = "limit = rated − (h − 900 m) / m per K, above 900 m",
        Source = "ASHRAE TC 9.9 (2021), notes from memory; density by ISO 2533, from memory; what the maker says comes first",
        Example = "rated 45 C altitude 1800 m",
        Work = Work,
    };

    private static SumAnswer Work(SumGiven given)
    {
        var most = ThermalClass.At(given[Rated], given[Height], given[Per]);
        var flow = 100 * Air.Density(25) / Air.Density(25, given[Height]);
        return new SumAnswer(
            $"At {new Told(given[Height], "m")} the air at the inlet may be {new Told(Math.Round(most, 1), "°C")}.",
            [Most.Is(most), Flow.Is(flow)],
            [new("limit", $"{Words.Of(given[Rated])} − max(0, {Words.Of(given[Height])} − 900) / {Words.Of(given[Per])}", most, "°C"), new("air for the same rise", "densities, one over the other", flow, "%")]);
    }
}

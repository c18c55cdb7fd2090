using Headroom.Domain.Quantities;
using Headroom.Engineering.Reliability;

namespace Headroom.Engineering.Sums.Reliability;

/// <summary>What a soak before delivery is worth.</summary>
internal static class BurnIn
{
    private static readonly NumberInput Shape = new("shape", "shape of the life, below 1 where new ones fail more often", new(0.1, 3)) { IsWhole = false };
    private static readonly QuantityInput Scale = new("scale", "scale of the life", Seconds.Units, new(1000, 1e9, "h"));
    private static readonly QuantityInput Soak = new("soak", "hours of the soak", Seconds.Units, new(0, 2000, "h")) { Default = "72 h", DefaultWhy = "common practice, no source" };

    private static readonly SumOutput With = new("first-year", "%", "fail in the first year at the client's, after the soak");
    private static readonly SumOutput Without = new("without", "%", "fail in it without the soak");
    private static readonly SumOutput Caught = new("caught", "%", "fail in the soak");

    /// <summary>The sum.</summary>
    public static Sum Sum { get; } = new()
    {
        Name = "burn-in",
        Discipline = ReliabilitySums.Discipline,
        Answers = "what is a soak before delivery worth?",
        Inputs = [Shape, Scale, Soak],
        Outputs = [With, Without, Caught],
        Formula = "1 − R(t + 8760 h) / R(t), R(t) = exp(−(t / η)^β)",
        Source = "Weibull distribution, textbooks",
        Example = "shape 0.5 scale 1000000 h",
        Work = Work,
    };

    private static SumAnswer Work(SumGiven given)
    {
        var (shape, scale, soak) = (given[Shape], given[Scale] / 3600, given[Soak] / 3600);
        var (caught, without) = (100 * EarlyLife.FailedWithin(shape, scale, soak), 100 * EarlyLife.FirstYearAfter(shape, scale, 0));
        double? with = caught < 100 ? 100 * EarlyLife.FirstYearAfter(shape, scale, soak) : null;
        return new SumAnswer(
            with is { } left
                ? (FormattableString)$"{new Told(without, "%")} fail in the first year without it; it catches {new Told(caught, "%")}, and {new Told(left, "%")} fail in the first year after it."
                : $"All fail in the soak: such a life is none.",
            [With.Is(with), Without.Is(without), Caught.Is(caught)],
            [new("in the soak", "1 − R(t)", caught, "%"), new("in the year after", "1 − R(t + 8760 h) / R(t)", with, "%")])
        {
            Notes = [$"A shape worked out from fewer than {EarlyLife.FewestToFit} failures is worth nothing; a soak pays mostly for what it shows of settings and ports."],
        };
    }
}

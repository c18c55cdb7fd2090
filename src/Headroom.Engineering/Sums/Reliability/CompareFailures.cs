using Headroom.Domain.Quantities;
using Headroom.Engineering.Reliability;

namespace Headroom.Engineering.Sums.Reliability;

/// <summary>Whether one model fails more often than another.</summary>
internal static class CompareFailures
{
    private static readonly NumberInput Failures = new("failures", "failures of the one", new(0, 5000));
    private static readonly QuantityInput Service = new("service", "its time in service, all units together", Seconds.Units, new(1, 1e9, "h"));
    private static readonly NumberInput OtherFailures = new("other-failures", "failures of the other", new(0, 5000));
    private static readonly QuantityInput OtherService = new("other-service", "its time in service", Seconds.Units, new(1, 1e9, "h"));

    private static readonly SumOutput Chance = new("chance", "%", "counts so uneven come about by chance");
    private static readonly SumOutput More = new("fails-more", "%", "probability that the one fails more often");
    private static readonly SumOutput Ratio = new("ratio", "", "its rate over the other's");
    private static readonly SumOutput Low = new("ratio-low", "", "low end of that with 95 %");
    private static readonly SumOutput High = new("ratio-high", "", "high end of that with 95 %");

    /// <summary>The sum.</summary>
    public static Sum Sum { get; } = new()
    {
        Name = "compare-failures",
        Discipline = ReliabilitySums.Discipline,
        Answers = "does one model fail more often than another?",
        Inputs = [Failures, Service, OtherFailures, OtherService],
        Outputs = [Chance, More, Ratio, Low, High],
        Formula = "given x1 + x2, x1 is binomial with T1 / (T1 + T2); two-sided by what is as unlikely or more so",
        Source = "exact conditional test for two Poisson rates; beliefs after Jeffreys' prior",
        Example = "failures 7 service 400000 h other-failures 2 other-service 500000 h",
        Work = Work,
    };

    private static SumAnswer Work(SumGiven given)
    {
        var (one, other) = (new FieldRecord((int)given[Failures], given[Service] / 3600), new FieldRecord((int)given[OtherFailures], given[OtherService] / 3600));
        var (chance, more) = (100 * RateComparison.TwoSided(one, other), 100 * RateComparison.FailsMore(one, other));
        var ratio = RateComparison.Ratio(one, other, 0.95);
        var enough = one.Failures + other.Failures >= RateComparison.EnoughFailures;
        var figures = new List<SumFigure> { Chance.Is(chance), More.Is(more), Low.Is(ratio.Least) };
        if (ratio.Ratio is { } value)
            figures.Add(Ratio.Is(value));
        if (ratio.Most is { } most)
            figures.Add(High.Is(most));
        return new SumAnswer(
            enough ? (FormattableString)$"Counts so uneven come about by chance in {new Told(chance, "%")}; the one fails more often with {new Told(more, "%")}."
                : $"Not enough data: {one.Failures + other.Failures} failures in all, {RateComparison.EnoughFailures} are the least; the one fails more often with {new Told(more, "%")}.",
            figures,
            [
                new("the one, in 10⁶ h", $"{one.Failures} in {Words.Of(one.Hours)} h", 1e6 * one.Rate, ""),
                new("the other, in 10⁶ h", $"{other.Failures} in {Words.Of(other.Hours)} h", 1e6 * other.Rate, ""),
                new("by chance", "two-sided, exact", chance, "%"),
            ])
        {
            Notes = [$"A cause that both share unevenly, such as hot cupboards, can make a model look worse than it is: compare among units alike."],
        };
    }
}

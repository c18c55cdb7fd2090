using Headroom.Domain.Quantities;
using Headroom.Engineering.Reliability;

namespace Headroom.Engineering.Sums.Reliability;

/// <summary>How often something fails, from hours in the field.</summary>
internal static class FailureRate
{
    private static readonly QuantityInput Service = new("service", "time in service of all units together", Seconds.Units, new(1, 1e9, "h"));
    private static readonly NumberInput Failures = new("failures", "failures in it", new(0, 10_000));
    private static readonly QuantityInput Mtbf = new("mtbf", "its maker's time between failures; half of it is believed", Seconds.Units, new(100, 1e8, "h")) { IsOptional = true };
    private static readonly QuantityInput Confidence = new("confidence", "probability of the intervals", Share.Units, new(50, 99.9, "%")) { Default = "90 %", DefaultWhy = "common practice, no source" };

    private static readonly SumOutput Rate = new("rate", "%", "fail in a year, as believed");
    private static readonly SumOutput Low = new("rate-low", "%", "low end of what is believed");
    private static readonly SumOutput High = new("rate-high", "%", "high end of what is believed");
    private static readonly SumOutput Least = new("mtbf-low", "h", "low end of the time between failures, classical");
    private static readonly SumOutput Most = new("mtbf-high", "h", "high end of it, classical");

    /// <summary>The sum.</summary>
    public static Sum Sum { get; } = new()
    {
        Name = "failure-rate",
        Discipline = ReliabilitySums.Discipline,
        Answers = "how often does it fail, by what was seen?",
        Inputs = [Service, Failures, Mtbf, Confidence],
        Outputs = [Rate, Low, High, Least, Most],
        Formula = "Gamma(1, mtbf / 2), or half a failure in no time, + failures and + hours; classical 2T / χ²",
        Source = "NIST/SEMATECH e-Handbook 8.4.5.1 and 8.4.6",
        Example = "service 2102400 h failures 3 mtbf 600000 h",
        Work = Work,
    };

    private static SumAnswer Work(SumGiven given)
    {
        var (hours, failures, confidence) = (given[Service] / 3600, (int)given[Failures], given[Confidence]);
        var prior = given.Maybe(Mtbf) is { } mtbf ? FieldRate.FromCatalogue(mtbf / 3600) : null;
        var belief = prior is null ? FieldRate.FromNothing(failures, hours) : prior.After(failures, hours);
        var classical = FieldRate.Classical(hours, failures, confidence);
        double AYear(double rate) => 100 * rate * EarlyLife.YearHours;
        var (mean, low, high) = (AYear(belief.MeanRate), AYear(FieldRate.RateQuantile(belief, (1 - confidence) / 2)), AYear(FieldRate.RateQuantile(belief, (1 + confidence) / 2)));
        var figures = new List<SumFigure> { Rate.Is(mean), Low.Is(low), High.Is(high), Least.Is(classical.LeastHours) };
        if (classical.MostHours is { } most)
            figures.Add(Most.Is(most));
        return new SumAnswer(
            $"{new Told(mean, "%")} fail in a year, {new Told(low, "%")} to {new Told(high, "%")} with {new Told(100 * confidence, "%")}.",
            figures,
            [
                new("believed", $"worth {Words.Of(belief.Failures)} failures in {Words.Of(belief.Hours)} h", mean, "%"),
                new("classical, at least", failures == 0 ? "no failure: one-sided" : "2T / χ²", classical.LeastHours, "h"),
            ])
        {
            Notes = failures < RateComparison.EnoughFailures ? [$"Few failures: the interval says more than the figure."] : [],
        };
    }
}

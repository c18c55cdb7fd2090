using Headroom.Domain.Ledgers;
using Headroom.Engineering.Binding;

namespace Headroom.Engineering.Reliability;

/// <summary>Tells where a failure rate comes from.</summary>
internal static class RateWorking
{
    private const double Confidence = 0.9;

    /// <summary>What is known of a model.</summary>
    public static List<WorkingInput> Inputs(FleetRate rate)
    {
        var inputs = new List<WorkingInput>();
        if (rate.CatalogueHours is { } hours)
        {
            inputs.Add(new("its maker's time between failures", hours, "h", Origins.Of(rate.Body?.BetweenFailures)));
            inputs.Add(new("believed of it", 100 * FieldRate.BelievedShare, "%", "makers' figures are optimistic; common practice, no source"));
        }

        inputs.Add(new("service of all together", rate.Seen?.Hours, "h", Origins.Of(rate.Row.Service)));
        inputs.Add(new("failed in it", rate.Row.Failed, "", rate.Row.Failed is null ? "not known" : rate.CountedIn));
        return inputs;
    }

    /// <summary>The failure rate of a model with both of its intervals.</summary>
    public static Working Of(FleetRate rate)
    {
        var steps = new List<WorkingStep>();
        if (rate.Prior is { } prior)
            steps.Add(new("before anything was seen", $"worth one failure in {Words.Of(prior.Hours)} h", 100 * YearRate(prior.MeanRate), "% a year"));
        if (rate.Belief is { } belief)
        {
            steps.Add(new("believed now", $"worth {Words.Of(belief.Failures)} failures in {Words.Of(belief.Hours)} h", 100 * YearRate(belief.MeanRate), "% a year"));
            steps.Add(new("from, with 90 %", "Gamma quantile 0.05", 100 * YearRate(FieldRate.RateQuantile(belief, (1 - Confidence) / 2)), "% a year"));
            steps.Add(new("to", "Gamma quantile 0.95", 100 * YearRate(FieldRate.RateQuantile(belief, (1 + Confidence) / 2)), "% a year"));
        }

        if (rate.Seen is { } seen)
        {
            var range = FieldRate.Classical(seen.Hours, seen.Failures, Confidence);
            steps.Add(new("classical, from", "1 / (2T / χ²)", range.MostHours is { } most ? 100 * YearRate(1 / most) : 0, "% a year"));
            steps.Add(new("classical, to", seen.Failures == 0 ? "no failure: one-sided, 95 %" : "1 / (2T / χ²)", 100 * YearRate(1 / range.LeastHours), "% a year"));
        }

        return new Working("prior Gamma(1, believed hours), then + failures and + hours; classical 2T / χ²", Inputs(rate), steps, "NIST/SEMATECH e-Handbook 8.4.5.1 and 8.4.6");
    }

    /// <summary>Failures a year of one unit [1/a].</summary>
    public static double YearRate(double rate) => rate * EarlyLife.YearHours;
}

using Headroom.Domain.Ledgers;

namespace Headroom.Engineering.Reliability;

/// <summary>Failure rates of the fleet; they have no limit.</summary>
internal static class ReliabilityFigures
{
    /// <summary>The figures of a result.</summary>
    public static IEnumerable<Figure> Of(ReliabilityResult result)
    {
        foreach (var rate in result.Rates)
        {
            double? value = rate.Belief is { } belief ? 100 * RateWorking.YearRate(belief.MeanRate) : null;
            yield return new Figure($"{ReliabilityLedger.Discipline}/{rate.Row.Model}/rate", rate.Row.Model, "fail in a year, as believed", value, "%", value is null ? "how often does it fail? count service and failures" : null, () => RateWorking.Of(rate));
        }
    }
}

using Headroom.Domain.Ledgers;

namespace Headroom.Engineering.Reliability;

/// <summary>Compares the models of a fleet in words.</summary>
internal static class ReliabilityAnswers
{
    // Below this two rates are told apart: common practice, no source.
    private const double Level = 0.05;

    /// <summary>The answers: each pair of models of which something was seen, then each model that stood both hot and cool.</summary>
    public static IEnumerable<Answer> Of(ReliabilityResult result)
    {
        for (var i = 0; i < result.Rates.Count; i++)
        {
            for (var j = i + 1; j < result.Rates.Count; j++)
            {
                if (result.Rates[i] is { Seen: { } one } first && result.Rates[j] is { Seen: { } other } second && first.Kind == second.Kind)
                    yield return new Answer(first.Row.Model, $"Does it fail more often than {second.Row.Model}?", Compared((first, one), (second, other)));
            }
        }

        foreach (var rate in result.Rates)
        {
            if (rate.Strata is { } strata)
                yield return new Answer(rate.Row.Model, "Does it fail more often in hot places?", Hot(rate.Row.Model, strata.Hot, strata.Cool));
        }
    }

    private static string Compared((FleetRate Rate, FieldRecord Seen) one, (FleetRate Rate, FieldRecord Seen) other)
    {
        var all = one.Seen.Failures + other.Seen.Failures;
        var more = RateComparison.FailsMore(one.Seen, other.Seen);
        if (all < RateComparison.EnoughFailures)
            return $"Not enough data: {Words.Count(all, "failure")} in all, {RateComparison.EnoughFailures} are the least. As far as anything is believed, it does with {Words.Of(Math.Round(100 * more))} %.";
        var chance = RateComparison.TwoSided(one.Seen, other.Seen);
        var verdict = chance < Level ? one.Seen.Rate > other.Seen.Rate ? "Yes" : "No, less often" : "Not told apart";
        return $"{verdict}: {one.Seen.Failures} in {Words.Of(one.Seen.Hours)} h against {other.Seen.Failures} in {Words.Of(other.Seen.Hours)} h; counts so uneven come about by chance in {Words.Of(Math.Round(100 * chance, 1))} %.{(chance < Level ? Within(one.Rate, other.Rate) : "")}";
    }

    // A cause that both share, such as hot cupboards, can make one model look worse than it is.
    private static string Within(FleetRate one, FleetRate other)
    {
        if (one.Strata is not { } first || other.Strata is not { } second)
            return "";
        var chance = RateComparison.TwoSidedWithin([(first.Hot, second.Hot), (first.Cool, second.Cool)]);
        return chance is { } within
            ? $" Compared only among those in hot places and among those in cool ones it is {Words.Of(Math.Round(100 * within, 1))} %{(within >= Level ? ": the places may be all there is to it" : "")}. This was looked for afterwards: it is a hint to follow, no proof."
            : "";
    }

    private static string Hot(string model, FieldRecord hot, FieldRecord cool)
    {
        if (hot.Failures + cool.Failures < RateComparison.EnoughFailures)
            return $"Not enough data: {Words.Count(hot.Failures + cool.Failures, "failure")} in all, {RateComparison.EnoughFailures} are the least.";
        var ratio = RateComparison.Ratio(hot, cool, 0.95);
        var chance = RateComparison.TwoSided(hot, cool);
        var times = ratio.Ratio is { } value ? $"{Words.Of(Math.Round(value, 1))} times as often ({Words.Of(Math.Round(ratio.Least, 1))} to {(ratio.Most is { } most ? Words.Of(Math.Round(most, 1)) : "no end")} with 95 %)" : "only there";
        return $"{(chance < Level ? "It looks so" : "Not told apart")}: {model} failed {times}; by chance {Words.Of(Math.Round(100 * chance, 1))} %. This was looked for afterwards: it is a hint to follow, no proof.";
    }
}

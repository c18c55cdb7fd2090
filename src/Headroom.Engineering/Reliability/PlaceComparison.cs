namespace Headroom.Engineering.Reliability;

/// <summary>One model, compared between hot places and cool ones. It is looked for afterwards, and so a hint, no proof.</summary>
/// <param name="Model">The model.</param>
/// <param name="Hot">What was seen in hot places.</param>
/// <param name="Cool">What was seen in cool ones.</param>
public sealed record PlaceComparison(string Model, FieldRecord Hot, FieldRecord Cool)
{
    /// <summary>Failures in both together.</summary>
    public int Failures => Hot.Failures + Cool.Failures;

    /// <summary>How likely counts so uneven are by chance [1]; null when there are too few failures to say.</summary>
    public double? Chance => Failures >= RateComparison.EnoughFailures ? RateComparison.TwoSided(Hot, Cool) : null;

    /// <summary>The rate in hot places over that in cool ones, with its interval.</summary>
    public RateRatio Ratio => RateComparison.Ratio(Hot, Cool, ModelComparison.Confidence);

    /// <summary>What it comes to in words.</summary>
    public string Sentence
    {
        get
        {
            if (Chance is not { } chance)
                return $"Not enough data: {Words.Count(Failures, "failure")} in all, {RateComparison.EnoughFailures} are the least.";
            var ratio = Ratio;
            var times = ratio.Ratio is { } value ? $"{Words.Of(Math.Round(value, 1))} times as often ({Words.Of(Math.Round(ratio.Least, 1))} to {(ratio.Most is { } most ? Words.Of(Math.Round(most, 1)) : "no end")} with 95 %)" : "only there";
            return $"{(chance >= ModelComparison.Level ? "Not told apart" : Hot.Rate > Cool.Rate ? "It looks so" : "No, it looks as if less often")}: {Model} failed {times}; by chance {Words.Of(Math.Round(100 * chance, 1))} %. This was looked for afterwards: it is a hint to follow, no proof.";
        }
    }
}

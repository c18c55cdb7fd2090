namespace Headroom.Engineering.Reliability;

/// <summary>Two models of one kind, compared by how often they fail.</summary>
/// <param name="First">The one model.</param>
/// <param name="Second">The other.</param>
/// <param name="One">What was seen of the one.</param>
/// <param name="Other">What was seen of the other.</param>
public sealed record ModelComparison(string First, string Second, FieldRecord One, FieldRecord Other)
{
    /// <summary>Confidence of the interval of the ratio [1].</summary>
    public const double Confidence = 0.95;

    // Below this two rates are told apart: common practice, no source.
    internal const double Level = 0.05;

    /// <summary>Both models within hot places and within cool ones; empty when it is not known which stood hot.</summary>
    public IReadOnlyList<(FieldRecord One, FieldRecord Other)> Within { get; init; } = [];

    /// <summary>Failures of both together.</summary>
    public int Failures => One.Failures + Other.Failures;

    /// <summary>True when there are failures enough to tell anything.</summary>
    public bool IsEnough => Failures >= RateComparison.EnoughFailures;

    /// <summary>Probability that the first fails more often [1].</summary>
    public double FailsMore => RateComparison.FailsMore(One, Other);

    /// <summary>How likely counts so uneven are by chance [1]; null when there are too few failures to say.</summary>
    public double? Chance => IsEnough ? RateComparison.TwoSided(One, Other) : null;

    /// <summary>True when the two are told apart.</summary>
    public bool IsToldApart => Chance < Level;

    /// <summary>The same with hot and cool places taken apart, looked for afterwards [1]; null when it was not looked for, or cannot be.</summary>
    public double? ChanceWithin => IsToldApart && Within.Count > 0 ? RateComparison.TwoSidedWithin(Within) : null;

    /// <summary>True when the places may be all there is to the difference.</summary>
    public bool MayBePlaces => ChanceWithin >= Level;

    /// <summary>The rate of the first over that of the second, with its interval.</summary>
    public RateRatio Ratio => RateComparison.Ratio(One, Other, Confidence);

    /// <summary>What it comes to in words.</summary>
    public string Sentence => Chance is not { } chance
        ? $"Not enough data: {Words.Count(Failures, "failure")} in all, {RateComparison.EnoughFailures} are the least. As far as anything is believed, it does with {Words.Of(Math.Round(100 * FailsMore))} %."
        : $"{Verdict}: {One.Failures} in {Words.Of(One.Hours)} h against {Other.Failures} in {Words.Of(Other.Hours)} h; counts so uneven come about by chance in {Words.Of(Math.Round(100 * chance, 1))} %.{Apart}";

    private string Verdict => !IsToldApart ? "Not told apart" : One.Rate > Other.Rate ? "Yes" : "No, less often";

    // A cause that both share, such as hot cupboards, can make one model look worse than it is.
    private string Apart => ChanceWithin is { } within
        ? $" Compared only among those in hot places and among those in cool ones it is {Words.Of(Math.Round(100 * within, 1))} %{(MayBePlaces ? ": the places may be all there is to it" : "")}. This was looked for afterwards: it is a hint to follow, no proof."
        : "";
}

using Headroom.Domain.Findings;

namespace Headroom.Domain.Jobs;

/// <summary>One record of a cable tester.</summary>
/// <param name="Label">The label as typed into the tester.</param>
/// <param name="Verdict">What it said.</param>
/// <param name="Limit">The limit it tested against, as it calls it.</param>
/// <param name="Metres">The length [m]; null when not told.</param>
/// <param name="MarginDecibels">The worst margin [dB]; null when not told.</param>
/// <param name="Day">The day as 2026-11-14; null when not told.</param>
/// <param name="LoopOhms">The resistance of pairs out and back by pair, such as <c>1-2</c> [Ω]; empty when not told.</param>
/// <param name="At">Where it stands in the file.</param>
public sealed record TesterResult(
    string Label,
    TesterVerdict Verdict,
    string Limit,
    double? Metres,
    double? MarginDecibels,
    string? Day,
    IReadOnlyList<KeyValuePair<string, double>> LoopOhms,
    Place At)
{
    /// <summary>Whether another record says the same of the same label: it was saved twice.</summary>
    /// <param name="other">The other.</param>
    /// <returns>True when all but the place is the same.</returns>
    public bool SaysTheSameAs(TesterResult other) =>
        Label == other.Label && SameFigures(other) && Verdict == other.Verdict && Limit == other.Limit && Day == other.Day;

    /// <summary>Whether length, margin and resistances are the same, as two cables never have them.</summary>
    /// <param name="other">The other.</param>
    /// <returns>True when they are, and length and margin are known.</returns>
    public bool SameFigures(TesterResult other) =>
        Metres is { } metres && metres == other.Metres && MarginDecibels is { } margin && margin == other.MarginDecibels && LoopOhms.SequenceEqual(other.LoopOhms);
}

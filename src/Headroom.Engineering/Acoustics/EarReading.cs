using Headroom.Domain.Jobs;

namespace Headroom.Engineering.Acoustics;

/// <summary>A reading at an ear beside the prediction of the same thing.</summary>
/// <param name="Reading">The reading.</param>
/// <param name="Branch">How the room was taken out of it; null when no background is known, so that it is an upper bound.</param>
/// <param name="Alone">The equipment alone out of it [dB(A)]; at most that for an upper bound; null when nothing can be said.</param>
/// <param name="Bound">True when it is only an upper bound.</param>
/// <param name="Predicted">The equipment alone as predicted under its conditions [dB(A)]; null when not known.</param>
/// <param name="Total">The whole level as predicted, background included [dB(A)]; null likewise.</param>
/// <param name="Apart">How far the two lie apart, in joint standard uncertainties [1]; null when they cannot be compared.</param>
/// <param name="Levels">The fan levels under its conditions, by source.</param>
public sealed record EarReading(
    Reading Reading,
    BackgroundBranch? Branch,
    Estimate? Alone,
    bool Bound,
    Estimate? Predicted,
    double? Total,
    double? Apart,
    IReadOnlyDictionary<string, int> Levels)
{
    /// <summary>What it means that the two lie so far apart; null when they cannot be compared.</summary>
    public Agreement? Agreement => Apart is { } apart ? Precision.Judge(apart) : null;
}

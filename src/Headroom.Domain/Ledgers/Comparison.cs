using Headroom.Domain.Jobs;

namespace Headroom.Domain.Ledgers;

/// <summary>A reading beside the prediction of the same thing.</summary>
/// <param name="Reading">The reading.</param>
/// <param name="Predicted">What was expected under the reading's conditions, in its unit; null when it could not be worked out.</param>
/// <param name="Difference">Reading - prediction; null likewise.</param>
/// <param name="Joint">Half the interval in which the two agree; null when neither has an interval.</param>
/// <param name="Governs">True when the reading is of the limit's own quantity and sound, so that the verdict follows it.</param>
/// <param name="Finding">What it means, in words.</param>
public sealed record Comparison(Reading Reading, double? Predicted, double? Difference, double? Joint, bool Governs, string Finding);

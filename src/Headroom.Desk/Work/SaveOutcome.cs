using Headroom.Domain.Findings;
using Headroom.JobFiles.Changes;

namespace Headroom.Desk.Work;

/// <summary>What became of a change.</summary>
/// <param name="Number">The revision it is in; null when it was not saved.</param>
/// <param name="Findings">Why it was refused; empty when it was not.</param>
/// <param name="Merged">What somebody else changed meanwhile, with the fields that both changed; null when nobody did.</param>
/// <param name="Text">The text as it was to be saved, for which findings hold; null when there was none.</param>
internal sealed record SaveOutcome(int? Number, IReadOnlyList<Finding> Findings, MergedJob? Merged, string? Text);

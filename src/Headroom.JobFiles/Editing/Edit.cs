using Headroom.Domain.Findings;

namespace Headroom.JobFiles.Editing;

/// <summary>An edited text, or why there is none.</summary>
/// <param name="Text">The whole text with the change in it; null when nothing was changed.</param>
/// <param name="Findings">Why nothing was changed, or what is to be asked about the text; empty when all is well.</param>
public sealed record Edit(string? Text, IReadOnlyList<Finding> Findings);

using Headroom.Domain.Findings;

namespace Headroom.JobFiles;

/// <summary>A job file with one record put in.</summary>
/// <param name="Before">The whole text as it is; null when nothing is to be written.</param>
/// <param name="Text">The whole text with the record in it; null when nothing is to be written.</param>
/// <param name="Findings">What is wrong with the record or would be with the job, and what is to be asked.</param>
public sealed record RecordedJob(string? Before, string? Text, IReadOnlyList<Finding> Findings);

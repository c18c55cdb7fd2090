using Headroom.Domain.Jobs;

namespace Headroom.Engineering.Differences;

/// <summary>A copy of a job with models swapped in one design.</summary>
/// <param name="Job">The copy, with that design alone and without readings; null when there is something wrong.</param>
/// <param name="Survey">What differs in the survey, in words.</param>
/// <param name="Complaints">All that is wrong with the swaps; empty when nothing.</param>
public sealed record SwappedJob(Job? Job, IReadOnlyList<DesignDifference> Survey, IReadOnlyList<string> Complaints);

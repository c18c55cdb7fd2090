using Headroom.Domain.Findings;
using Headroom.Domain.Jobs;
using Headroom.Store;

namespace Headroom.Desk.Work;

/// <summary>A revision of a job, read.</summary>
/// <param name="Stored">The job in the store.</param>
/// <param name="Number">The revision.</param>
/// <param name="Text">Its text and sheets.</param>
/// <param name="Read">The job as far as it could be read; null when not at all.</param>
/// <param name="Findings">What is wrong or to be asked.</param>
/// <param name="Models">What it was read with.</param>
internal sealed record OpenJob(StoredJob Stored, int Number, JobText Text, Job? Read, IReadOnlyList<Finding> Findings, ModelsAtHand Models)
{
    /// <summary>What stands in the way.</summary>
    public IEnumerable<Finding> Errors => Findings.Where(finding => finding.Severity == Severity.Error);

    /// <summary>The job, when it can be worked with; else null.</summary>
    public Job? Sound => Errors.Any() ? null : Read;

    /// <summary>True for the last revision.</summary>
    public bool IsLast => Number == Stored.Head;
}

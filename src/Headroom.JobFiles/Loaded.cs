using Headroom.Domain.Findings;

namespace Headroom.JobFiles;

/// <summary>What was read, with everything that is wrong or looks wrong in it.</summary>
/// <typeparam name="T">What was wanted.</typeparam>
/// <param name="Value">What was read, as far as it could be; null when nothing could be read.</param>
/// <param name="Findings">All findings, in order of place.</param>
public sealed record Loaded<T>(T? Value, IReadOnlyList<Finding> Findings)
    where T : class
{
    /// <summary>True when there is a value and no finding stands in the way of working with it.</summary>
    public bool Ok => Value is not null && Findings.All(finding => finding.Severity != Severity.Error);
}

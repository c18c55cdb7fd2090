using Headroom.Domain.Findings;

namespace Headroom.JobFiles;

/// <summary>Edited tables as they were understood, and the job with what was changed in it.</summary>
/// <param name="Findings">All findings, about the tables and about the job as it would be; those about a cell stand at the cell.</param>
public sealed record AmendedJob(IReadOnlyList<Finding> Findings)
{
    /// <summary>The names of the tables that were read.</summary>
    public IReadOnlyList<string> Read { get; init; } = [];

    /// <summary>The sheets that were not read, since they are worked out and not written down.</summary>
    public IReadOnlyList<string> NotRead { get; init; } = [];

    /// <summary>What differs, a line each, with its cell.</summary>
    public IReadOnlyList<string> Changes { get; init; } = [];

    /// <summary>The whole text of the job as it is; null when nothing is to be written.</summary>
    public string? Before { get; init; }

    /// <summary>The whole text of the job as it would be; null when nothing is to be written.</summary>
    public string? Text { get; init; }
}

using Headroom.Domain.Findings;

namespace Headroom.JobFiles;

/// <summary>A sheet as it was understood, and the job with its rows in it.</summary>
/// <param name="Findings">All findings, about the sheet and about the job with it.</param>
public sealed record ImportedSheet(IReadOnlyList<Finding> Findings)
{
    /// <summary>How it is written, each with how that is known: encoding, separator, decimal sign.</summary>
    public IReadOnlyList<KeyValuePair<string, string>> Facts { get; init; } = [];

    /// <summary>Its columns, in order.</summary>
    public IReadOnlyList<ImportedColumn> Columns { get; init; } = [];

    /// <summary>How many rows it has.</summary>
    public int Rows { get; init; }

    /// <summary>How many rows were left because of a finding.</summary>
    public int Left { get; init; }

    /// <summary>How many rows say nothing, or what another has said.</summary>
    public int PassedOver { get; init; }

    /// <summary>What columns come to, by field: <c>at least 412.5 m, 2 of 24 unknown</c>.</summary>
    public IReadOnlyList<KeyValuePair<string, string>> Sums { get; init; } = [];

    /// <summary>Where in the job the rows go: <c>survey/drops</c>; null when nothing can be taken over.</summary>
    public string? Place { get; init; }

    /// <summary>The rows as lines of a job file.</summary>
    public IReadOnlyList<string> Lines { get; init; } = [];

    /// <summary>The whole text of the job as it is; null when nothing can be taken over.</summary>
    public string? Before { get; init; }

    /// <summary>The whole text of the job with the rows in it; null when nothing can be taken over.</summary>
    public string? Text { get; init; }
}

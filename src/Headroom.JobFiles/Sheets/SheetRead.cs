using Headroom.Domain.Findings;
using Headroom.JobFiles.Yaml;

namespace Headroom.JobFiles.Sheets;

/// <summary>A sheet that was read: how it was understood, what would stand in a job file for it, and what is wrong with it.</summary>
/// <param name="Plan">What was to be read.</param>
/// <param name="Facts">How it is written, each with how that is known: separator, decimal sign, encoding.</param>
/// <param name="Columns">The columns.</param>
/// <param name="Entries">The rows; with an empty key where they stand one after the other.</param>
/// <param name="Findings">All findings.</param>
internal sealed record SheetRead(
    SheetPlan Plan,
    IReadOnlyList<KeyValuePair<string, string>> Facts,
    IReadOnlyList<SheetColumn> Columns,
    IReadOnlyList<YamlEntry> Entries,
    IReadOnlyList<Finding> Findings)
{
    /// <summary>How many rows there are, how many of them were left because of a finding, and how many say nothing new.</summary>
    public (int All, int Left, int PassedOver) Rows { get; init; }

    /// <summary>What is known of the rows that were left.</summary>
    public LeftRows LeftRows { get; init; } = LeftRows.AnyRow;

    /// <summary>What the columns come to.</summary>
    public IReadOnlyList<SheetTally> Tallies { get; init; } = [];

    /// <summary>The kind of sheet.</summary>
    public SheetKind Kind => SheetKinds.Find(Plan.Kind)!;

    /// <summary>True when a finding stands in the way.</summary>
    public bool Stands => Findings.Any(finding => finding.Severity == Severity.Error);
}

namespace Headroom.JobFiles;

/// <summary>Edited tables that are to be taken back.</summary>
/// <param name="File">The workbook, or a table of it as CSV.</param>
/// <param name="Kind">Which table it is; null to go by the names of the sheets of a workbook.</param>
public sealed record AmendPlan(string File, string? Kind)
{
    /// <summary>The things whose rows are gone on purpose, by name: they are taken out of the job. Of any other row that is gone is asked.</summary>
    public IReadOnlyList<string> TakeOut { get; init; } = [];
}

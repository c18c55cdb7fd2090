namespace Headroom.JobFiles;

/// <summary>Edited tables that are to be taken back.</summary>
/// <param name="File">The workbook, or a table of it as CSV.</param>
/// <param name="Kind">Which table it is; null to go by the names of the sheets of a workbook.</param>
public sealed record AmendPlan(string File, string? Kind);

namespace Headroom.JobFiles;

/// <summary>A column of a sheet, as it was understood.</summary>
/// <param name="Letters">Its letters in a spreadsheet program.</param>
/// <param name="Heading">What heads it.</param>
/// <param name="Field">The field it becomes; null when it is taken for nothing.</param>
/// <param name="Aside">What it is, when it is a usual column that such a sheet has no use for; null otherwise.</param>
/// <param name="Unit">The unit of its numbers, as the heading says; null when it does not.</param>
public sealed record ImportedColumn(string Letters, string Heading, string? Field, string? Aside, string? Unit);

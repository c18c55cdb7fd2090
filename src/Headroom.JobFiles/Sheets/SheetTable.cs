namespace Headroom.JobFiles.Sheets;

/// <summary>A sheet as cells.</summary>
/// <param name="Header">The cells that name the columns.</param>
/// <param name="Rows">The rows below, without those in which nothing stands.</param>
internal sealed record SheetTable(IReadOnlyList<SheetCell> Header, IReadOnlyList<SheetRow> Rows);

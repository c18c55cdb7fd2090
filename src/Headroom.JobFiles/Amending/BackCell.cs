using Headroom.JobFiles.Sheets;

namespace Headroom.JobFiles.Amending;

/// <summary>A cell of an edited table.</summary>
/// <param name="Cell">The cell; its text is empty where nothing stands in it.</param>
/// <param name="Number">Its number, where the workbook has one; null for a text.</param>
internal sealed record BackCell(SheetCell Cell, double? Number);

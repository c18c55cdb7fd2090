using Headroom.Domain.Findings;

namespace Headroom.JobFiles.Sheets;

/// <summary>One row.</summary>
/// <param name="At">Where it begins.</param>
/// <param name="Number">Its number, the line of headings being 1 where it is the first.</param>
/// <param name="Cells">Its cells; fewer than there are columns where the rest is empty.</param>
internal sealed record SheetRow(Place At, int Number, IReadOnlyList<SheetCell> Cells)
{
    /// <summary>The cell of a column; null when the row ends before it.</summary>
    public SheetCell? Cell(int column) => column < Cells.Count ? Cells[column] : null;

    /// <summary>True when nothing stands in it.</summary>
    public bool IsEmpty => Cells.All(cell => cell.Text.Length == 0);
}

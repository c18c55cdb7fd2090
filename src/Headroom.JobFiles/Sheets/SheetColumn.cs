namespace Headroom.JobFiles.Sheets;

/// <summary>A column of a sheet with what it becomes.</summary>
/// <param name="Index">Its number, from 0.</param>
/// <param name="Heading">The cell that heads it.</param>
/// <param name="Field">What it becomes; null when nothing.</param>
/// <param name="Unit">The unit of its numbers, as the heading or the list in the job says; null when neither does.</param>
internal sealed record SheetColumn(int Index, SheetCell Heading, SheetField? Field, string? Unit)
{
    /// <summary>How it is called in a message: <c>column C 'Length'</c>.</summary>
    public string Called => $"column {SheetCell.Letters(Index)}" + (Heading.Text.Length > 0 ? $" '{Words.Short(Heading.Text)}'" : "");

    /// <summary>True when its cells go into the job.</summary>
    public bool IsTaken => Field is { Kind: not (CellKind.Aside or CellKind.Unit) };
}

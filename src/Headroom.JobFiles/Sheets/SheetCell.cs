using Headroom.Domain.Findings;

namespace Headroom.JobFiles.Sheets;

/// <summary>One cell.</summary>
/// <param name="Text">What stands in it, without quotation marks around it and spaces at its ends.</param>
/// <param name="At">Where it stands in the file.</param>
/// <param name="Name">Where it stands for who looks at it in a spreadsheet program: <c>C7</c>.</param>
internal sealed record SheetCell(string Text, Place At, string Name)
{
    /// <summary>The letters of a column, from 0: <c>A</c> to <c>Z</c>, then <c>AA</c>.</summary>
    public static string Letters(int column) =>
        column < 26 ? ((char)('A' + column)).ToString() : Letters(column / 26 - 1) + Letters(column % 26);
}

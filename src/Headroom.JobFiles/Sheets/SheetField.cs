using Headroom.Domain.Quantities;

namespace Headroom.JobFiles.Sheets;

/// <summary>What a column may become.</summary>
/// <param name="Name">The field, as the job file calls it; of columns that are set aside, what they are.</param>
/// <param name="Kind">How its cells are read.</param>
/// <param name="Words">The words by which people head such a column, in small letters with single spaces.</param>
internal sealed record SheetField(string Name, CellKind Kind, params string[] Words)
{
    /// <summary>The units of a quantity; null otherwise.</summary>
    public UnitTable? Units { get; init; }

    /// <summary>True when what the cells come to together means something: metres of cable, watts.</summary>
    public bool AddsUp { get; init; }

    /// <summary>True when empty cells are asked about, since something cannot be worked out without them.</summary>
    public bool IsAsked { get; init; }
}

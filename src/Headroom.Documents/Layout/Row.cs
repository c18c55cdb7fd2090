namespace Headroom.Documents.Layout;

/// <summary>A row of a table.</summary>
/// <param name="Cells">Its cells, one a column; those missing at the end are empty.</param>
public sealed record Row(IReadOnlyList<Cell> Cells)
{
    /// <summary>True for a row that sums up those above it: a rule stands over it, and it stays with the one before.</summary>
    public bool IsSum { get; init; }

    /// <summary>True for a row that names those below it: it stays with the next.</summary>
    public bool IsTitle { get; init; }

    /// <summary>The least height [pt], for a row that is filled by hand; null for what its cells need.</summary>
    public double? Least { get; init; }

    /// <summary>A row of texts.</summary>
    /// <param name="cells">The texts.</param>
    public static Row Of(params string[] cells) => new([.. cells.Select(cell => new Cell(cell))]);
}

using Headroom.Documents.Canvas;

namespace Headroom.Documents.Layout;

/// <summary>A cell of a table.</summary>
/// <param name="Text">What it says; wrapped where it is too long.</param>
/// <param name="Lettering">How it is written; null for that of cells.</param>
public sealed record Cell(string Text, Lettering? Lettering = null)
{
    /// <summary>Draws into the cell, in place of a text; null for a text.</summary>
    public Action<ICanvas, Box>? Draw { get; init; }

    /// <summary>Over how many columns it reaches.</summary>
    public int Span { get; init; } = 1;
}

using Headroom.Documents.Canvas;

namespace Headroom.Documents.Layout;

/// <summary>A sheet on which everything has its place.</summary>
/// <param name="Size">Its size.</param>
/// <param name="Items">What stands on it.</param>
/// <param name="Bookmarks">The headings that begin on it.</param>
public sealed record LaidSheet(SheetSize Size, IReadOnlyList<Placed> Items, IReadOnlyList<string> Bookmarks)
{
    /// <summary>The paper that begins on it, in a pack of papers; null for none.</summary>
    public string? Chapter { get; init; }

    /// <summary>Draws the sheet.</summary>
    /// <param name="canvas">On what.</param>
    public void Draw(ICanvas canvas)
    {
        foreach (var item in Items)
            item.Draw(canvas);
    }
}

namespace Headroom.Documents.Canvas;

/// <summary>A drawing of a known size, for whichever canvas.</summary>
/// <param name="Title">What it shows, in a sentence.</param>
/// <param name="Width">Its width [pt].</param>
/// <param name="Height">Its height [pt].</param>
/// <param name="Draw">Draws it, with its upper left corner at a place.</param>
public sealed record Picture(string Title, double Width, double Height, Action<ICanvas, Spot> Draw);

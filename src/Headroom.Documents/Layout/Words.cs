using Headroom.Documents.Canvas;

namespace Headroom.Documents.Layout;

/// <summary>A paragraph.</summary>
/// <param name="Text">The text; a line break begins a new line.</param>
/// <param name="Lettering">How it is written; null for running text.</param>
public sealed record Words(string Text, Lettering? Lettering = null) : Block;

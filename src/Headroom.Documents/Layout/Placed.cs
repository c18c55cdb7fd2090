using Headroom.Documents.Canvas;

namespace Headroom.Documents.Layout;

/// <summary>Something at its place on a sheet.</summary>
/// <param name="Box">The room it takes.</param>
/// <param name="Text">What it says; empty for a drawing or a rule.</param>
/// <param name="Draw">Draws it.</param>
public sealed record Placed(Box Box, string Text, Action<ICanvas> Draw);

using Headroom.Documents.Canvas;

namespace Headroom.Documents.Layout;

/// <summary>A drawing; it is made smaller when it is wider or higher than the sheet.</summary>
/// <param name="Picture">The drawing.</param>
public sealed record Drawn(Picture Picture) : Block;

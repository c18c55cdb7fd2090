namespace Headroom.Documents.Layout;

/// <summary>A heading; it never stands alone at the foot of a sheet, and it is a bookmark.</summary>
/// <param name="Text">The heading.</param>
public sealed record Heading(string Text) : Block;

namespace Headroom.Planning.Packing;

/// <summary>The links that leave a place; one box of it, its head, has them all, and the others of the place link to it.</summary>
/// <param name="Line">Links to the line: 1 where it comes in, else 0.</param>
/// <param name="Backbone">Links to the heads of other places.</param>
/// <param name="Must">True when a box must stand there even if it serves nothing, since others link through it.</param>
public sealed record PlaceLinks(int Line, int Backbone, bool Must);

namespace Headroom.Desk.Tasks;

/// <summary>A drawing of what was found.</summary>
/// <param name="Title">What it shows.</param>
/// <param name="Svg">The drawing, as a part of a page.</param>
public sealed record KeptDrawing(string Title, string Svg);

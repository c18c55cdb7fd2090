namespace Headroom.Domain.Firms;

/// <summary>A shape of a picture, its curves already in short straight pieces.</summary>
/// <param name="Lines">Its outlines, each a row of corners.</param>
/// <param name="Fill">What it is filled with, as <c>#rrggbb</c>; null for nothing.</param>
/// <param name="Stroke">The colour of its outlines, as <c>#rrggbb</c>; null for none.</param>
/// <param name="StrokeWidth">The width of its outlines, in the unit of the picture.</param>
public sealed record ArtShape(IReadOnlyList<ArtLine> Lines, string? Fill, string? Stroke, double StrokeWidth)
{
    /// <summary>True when what lies inside two outlines is a hole.</summary>
    public bool EvenOdd { get; init; }
}

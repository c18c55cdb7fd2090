namespace Headroom.Domain.Firms;

/// <summary>An outline of a shape.</summary>
/// <param name="Corners">Its corners, in the unit of the picture, from its upper left corner.</param>
/// <param name="Closed">True when the last is joined to the first.</param>
public sealed record ArtLine(IReadOnlyList<(double X, double Y)> Corners, bool Closed);

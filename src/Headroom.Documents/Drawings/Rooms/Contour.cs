namespace Headroom.Documents.Drawings.Rooms;

/// <summary>A line along which a level is the same.</summary>
/// <param name="Level">The level [dB(A)].</param>
/// <param name="X">Along the room, corner by corner [m].</param>
/// <param name="Y">Across the room, corner by corner [m].</param>
/// <param name="Closed">True when its end is its beginning.</param>
public sealed record Contour(double Level, double[] X, double[] Y, bool Closed);

namespace Headroom.Engineering.Acoustics;

/// <summary>A part of a wall.</summary>
/// <param name="SquareMetres">Its area [m²]; 0 or more.</param>
/// <param name="Reduction">Its sound reduction [dB]; 0 for an opening.</param>
public readonly record struct WallPart(double SquareMetres, double Reduction);

namespace Headroom.Domain.Quantities;

/// <summary>Length, width and height of a box-shaped space or thing [m].</summary>
/// <param name="Length">Along the first wall [m].</param>
/// <param name="Width">Along the second wall [m].</param>
/// <param name="Height">From floor to ceiling [m].</param>
public readonly record struct Size(double Length, double Width, double Height);

namespace Headroom.Domain.Quantities;

/// <summary>A place inside a space, measured from its corner [m].</summary>
/// <param name="X">Along the length [m].</param>
/// <param name="Y">Along the width [m].</param>
/// <param name="Z">Above the floor [m].</param>
public readonly record struct Spot(double X, double Y, double Z);

namespace Headroom.Domain.Quantities;

/// <summary>A number of things that are counted, not measured; it is written without a unit.</summary>
/// <param name="Value">How many.</param>
public readonly record struct Pieces(int Value);

namespace Headroom.Engineering.Sums;

/// <summary>The value of one input.</summary>
/// <param name="Written">As it was written.</param>
/// <param name="Numbers">Its numbers [in the base unit of the input], one for each of a list; empty for a word.</param>
/// <param name="IsDefault">Whether it was taken because nothing was given.</param>
public sealed record SumValue(string Written, IReadOnlyList<double> Numbers, bool IsDefault = false);

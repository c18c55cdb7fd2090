namespace Headroom.Engineering.Sums;

/// <summary>One figure that a sum came to.</summary>
/// <param name="Output">Which one it is.</param>
/// <param name="Value">The value in the unit of the output [as the output says]; null when there can be none.</param>
public sealed record SumFigure(SumOutput Output, double? Value);

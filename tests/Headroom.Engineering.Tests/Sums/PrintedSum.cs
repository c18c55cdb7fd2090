namespace Headroom.Engineering.Tests.Sums;

/// <summary>A printed row that a sum is held against.</summary>
/// <param name="Row">The row as the reference values name it.</param>
/// <param name="Typed">The sum and what it is given.</param>
/// <param name="Output">Which figure.</param>
/// <param name="Printed">The figure as printed; null where the row says there is none.</param>
/// <param name="Tolerance">Half the last printed digit, or wider with a reason beside it.</param>
public sealed record PrintedSum(string Row, string Typed, string Output, double? Printed, double Tolerance)
{
    public override string ToString() => $"{Row}: {Output} of {Typed}";
}

namespace Headroom.Engineering.Sums;

/// <summary>One figure that a sum may come to.</summary>
/// <param name="Name">The name in plain words with hyphens.</param>
/// <param name="Unit">Its unit; empty for a plain number.</param>
/// <param name="What">What it is, in a few words.</param>
public sealed record SumOutput(string Name, string Unit, string What)
{
    /// <summary>The figure with its value.</summary>
    /// <param name="value">The value in <see cref="Unit"/> [as the unit says]; null when there can be none. Source: none, it is kept as it is.</param>
    /// <returns>The figure.</returns>
    public SumFigure Is(double? value) => new(this, value is { } number && double.IsFinite(number) ? number : null);
}

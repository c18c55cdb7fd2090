namespace Headroom.Domain.Quantities;

/// <summary>A height in a 19-inch rack [U]; one unit is 44.45 mm (IEC 60297).</summary>
/// <param name="Value">The number [U].</param>
public readonly record struct RackUnits(double Value) : IQuantity<RackUnits>
{
    /// <inheritdoc/>
    public static UnitTable Units { get; } = new(
        "a height in rack units",
        [
            new("U", 1, 0, "HE"),
        ]);

    /// <inheritdoc/>
    public static RackUnits Of(double value) => new(value);
}

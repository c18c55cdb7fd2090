namespace Headroom.Domain.Quantities;

/// <summary>An area [m²].</summary>
/// <param name="Value">The number [m²].</param>
public readonly record struct SquareMetres(double Value) : IQuantity<SquareMetres>
{
    /// <inheritdoc/>
    public static UnitTable Units { get; } = new(
        "an area",
        [
            new("m2", 1, 0, "m²"),
            new("cm2", 1e-4, 0, "cm²"),
            new("ft2", 0.09290304, 0, "ft²", "sq ft"),
        ]);

    /// <inheritdoc/>
    public static SquareMetres Of(double value) => new(value);
}

namespace Headroom.Domain.Quantities;

/// <summary>The cross-section of one conductor [mm²].</summary>
/// <param name="Value">The number [mm²].</param>
public readonly record struct SquareMillimetres(double Value) : IQuantity<SquareMillimetres>
{
    /// <inheritdoc/>
    public static UnitTable Units { get; } = new(
        "a cross-section",
        [
            new("mm2", 1, 0, "mm²"),
            new GaugeUnit(),
        ]);

    /// <inheritdoc/>
    public static SquareMillimetres Of(double value) => new(value);
}

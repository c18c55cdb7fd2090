namespace Headroom.Domain.Quantities;

/// <summary>A power that is drawn, given or lost [W].</summary>
/// <param name="Value">The number [W].</param>
public readonly record struct Watts(double Value) : IQuantity<Watts>
{
    /// <inheritdoc/>
    public static UnitTable Units { get; } = new(
        "a power",
        [
            new("W", 1),
            new("mW", 0.001),
            new("kW", 1000),
        ]);

    /// <inheritdoc/>
    public static Watts Of(double value) => new(value);
}

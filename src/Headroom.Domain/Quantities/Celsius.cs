namespace Headroom.Domain.Quantities;

/// <summary>A temperature on the Celsius scale [°C]: a point, not an amount.</summary>
/// <param name="Value">The number [°C].</param>
public readonly record struct Celsius(double Value) : IQuantity<Celsius>
{
    /// <inheritdoc/>
    public static UnitTable Units { get; } = new(
        "a temperature",
        [
            new("°C", 1, 0, "C", "degC"),
            new("°F", 5.0 / 9.0, -160.0 / 9.0, "F", "degF"),
        ]);

    /// <inheritdoc/>
    public static Celsius Of(double value) => new(value);
}

namespace Headroom.Domain.Quantities;

/// <summary>A mass [kg].</summary>
/// <param name="Value">The number [kg].</param>
public readonly record struct Kilograms(double Value) : IQuantity<Kilograms>
{
    /// <inheritdoc/>
    public static UnitTable Units { get; } = new(
        "a mass",
        [
            new("kg", 1),
            new("g", 0.001),
            new("lb", 0.45359237, 0, "lbs"),
        ]);

    /// <inheritdoc/>
    public static Kilograms Of(double value) => new(value);
}

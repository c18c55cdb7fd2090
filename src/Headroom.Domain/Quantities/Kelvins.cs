namespace Headroom.Domain.Quantities;

/// <summary>A difference of two temperatures [K].</summary>
/// <param name="Value">The number [K].</param>
public readonly record struct Kelvins(double Value) : IQuantity<Kelvins>
{
    /// <inheritdoc/>
    public static UnitTable Units { get; } = new(
        "a difference of temperatures",
        [
            new("K", 1),
            new("°C", 1, 0, "C"),
            new("°F", 5.0 / 9.0, 0, "F"),
        ]);

    /// <inheritdoc/>
    public static Kelvins Of(double value) => new(value);
}

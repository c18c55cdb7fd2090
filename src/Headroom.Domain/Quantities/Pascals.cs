namespace Headroom.Domain.Quantities;

/// <summary>A pressure [Pa].</summary>
/// <param name="Value">The number [Pa].</param>
public readonly record struct Pascals(double Value) : IQuantity<Pascals>
{
    /// <inheritdoc/>
    public static UnitTable Units { get; } = new(
        "a pressure",
        [
            new("Pa", 1),
            new("mmH2O", 9.80665),
        ]);

    /// <inheritdoc/>
    public static Pascals Of(double value) => new(value);
}

namespace Headroom.Domain.Quantities;

/// <summary>A current [A].</summary>
/// <param name="Value">The number [A].</param>
public readonly record struct Amperes(double Value) : IQuantity<Amperes>
{
    /// <inheritdoc/>
    public static UnitTable Units { get; } = new(
        "a current",
        [
            new("A", 1),
            new("mA", 0.001),
        ]);

    /// <inheritdoc/>
    public static Amperes Of(double value) => new(value);
}

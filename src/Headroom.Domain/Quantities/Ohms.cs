namespace Headroom.Domain.Quantities;

/// <summary>A resistance [Ω].</summary>
/// <param name="Value">The number [Ω].</param>
public readonly record struct Ohms(double Value) : IQuantity<Ohms>
{
    /// <inheritdoc/>
    public static UnitTable Units { get; } = new(
        "a resistance",
        [
            new("Ω", 1, 0, "Ω", "ohm", "ohms", "Ohm"),
            new("kΩ", 1000, 0, "kΩ", "kohm"),
            new("mΩ", 0.001, 0, "mΩ", "mohm"),
        ]);

    /// <inheritdoc/>
    public static Ohms Of(double value) => new(value);
}

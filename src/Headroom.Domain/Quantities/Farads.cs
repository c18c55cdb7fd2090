namespace Headroom.Domain.Quantities;

/// <summary>A capacitance [F].</summary>
/// <param name="Value">The number [F].</param>
public readonly record struct Farads(double Value) : IQuantity<Farads>
{
    /// <inheritdoc/>
    public static UnitTable Units { get; } = new(
        "a capacitance",
        [
            new("F", 1),
            new("µF", 1e-6, 0, "μF", "uF"),
            new("nF", 1e-9),
        ]);

    /// <inheritdoc/>
    public static Farads Of(double value) => new(value);
}

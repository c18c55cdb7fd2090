namespace Headroom.Domain.Quantities;

/// <summary>A voltage between two conductors [V].</summary>
/// <param name="Value">The number [V].</param>
public readonly record struct Volts(double Value) : IQuantity<Volts>
{
    /// <inheritdoc/>
    public static UnitTable Units { get; } = new(
        "a voltage",
        [
            new("V", 1, 0, "VDC", "V DC", "VAC", "V AC"),
            new("mV", 0.001),
        ]);

    /// <inheritdoc/>
    public static Volts Of(double value) => new(value);
}

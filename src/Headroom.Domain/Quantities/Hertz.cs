namespace Headroom.Domain.Quantities;

/// <summary>A frequency [Hz].</summary>
/// <param name="Value">The number [Hz].</param>
public readonly record struct Hertz(double Value) : IQuantity<Hertz>
{
    /// <inheritdoc/>
    public static UnitTable Units { get; } = new(
        "a frequency",
        [
            new("Hz", 1),
            new("kHz", 1e3),
            new("MHz", 1e6),
        ]);

    /// <inheritdoc/>
    public static Hertz Of(double value) => new(value);
}

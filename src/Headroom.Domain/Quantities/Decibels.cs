namespace Headroom.Domain.Quantities;

/// <summary>A difference of two levels, a gain or a loss [dB].</summary>
/// <param name="Value">The number [dB].</param>
public readonly record struct Decibels(double Value) : IQuantity<Decibels>
{
    /// <inheritdoc/>
    public static UnitTable Units { get; } = new(
        "a loss or gain",
        [
            new("dB", 1),
        ]);

    /// <inheritdoc/>
    public static Decibels Of(double value) => new(value);
}

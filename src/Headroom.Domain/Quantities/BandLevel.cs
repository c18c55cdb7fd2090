namespace Headroom.Domain.Quantities;

/// <summary>The level of a sound in one octave band, unweighted [dB].</summary>
/// <param name="Value">The number [dB].</param>
public readonly record struct BandLevel(double Value) : IQuantity<BandLevel>
{
    /// <inheritdoc/>
    public static UnitTable Units { get; } = new(
        "a level of an octave band",
        [
            new("dB", 1),
        ]);

    /// <inheritdoc/>
    public static BandLevel Of(double value) => new(value);
}

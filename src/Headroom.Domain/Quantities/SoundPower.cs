namespace Headroom.Domain.Quantities;

/// <summary>A sound power level re 1 pW [dB], of a source.</summary>
/// <param name="Value">The number [dB].</param>
public readonly record struct SoundPower(double Value) : IQuantity<SoundPower>
{
    /// <inheritdoc/>
    public static UnitTable Units { get; } = new(
        "a sound power level",
        [
            new("dB(A)", 1, 0, "dBA", "dB A"),
            new("dB", 1),
            new("B", 10, 0, "B(A)", "bel"),
        ]);

    /// <inheritdoc/>
    public static SoundPower Of(double value) => new(value);
}

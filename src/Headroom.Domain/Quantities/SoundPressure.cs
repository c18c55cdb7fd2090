namespace Headroom.Domain.Quantities;

/// <summary>A sound pressure level re 20 µPa [dB], at a place.</summary>
/// <param name="Value">The number [dB].</param>
public readonly record struct SoundPressure(double Value) : IQuantity<SoundPressure>
{
    /// <inheritdoc/>
    public static UnitTable Units { get; } = new(
        "a sound pressure level",
        [
            new("dB(A)", 1, 0, "dBA", "dB A"),
            new("dB", 1),
        ]);

    /// <inheritdoc/>
    public static SoundPressure Of(double value) => new(value);
}

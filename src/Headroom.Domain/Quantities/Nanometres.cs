namespace Headroom.Domain.Quantities;

/// <summary>A wavelength of light [nm].</summary>
/// <param name="Value">The number [nm].</param>
public readonly record struct Nanometres(double Value) : IQuantity<Nanometres>
{
    /// <inheritdoc/>
    public static UnitTable Units { get; } = new(
        "a wavelength",
        [
            new("nm", 1),
        ]);

    /// <inheritdoc/>
    public static Nanometres Of(double value) => new(value);
}

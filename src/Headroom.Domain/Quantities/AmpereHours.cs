namespace Headroom.Domain.Quantities;

/// <summary>The charge of a battery [Ah].</summary>
/// <param name="Value">The number [Ah].</param>
public readonly record struct AmpereHours(double Value) : IQuantity<AmpereHours>
{
    /// <inheritdoc/>
    public static UnitTable Units { get; } = new(
        "a charge",
        [
            new("Ah", 1),
        ]);

    /// <inheritdoc/>
    public static AmpereHours Of(double value) => new(value);
}

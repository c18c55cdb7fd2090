namespace Headroom.Domain.Quantities;

/// <summary>An apparent power [VA]; never the same as watts.</summary>
/// <param name="Value">The number [VA].</param>
public readonly record struct VoltAmperes(double Value) : IQuantity<VoltAmperes>
{
    /// <inheritdoc/>
    public static UnitTable Units { get; } = new(
        "an apparent power",
        [
            new("VA", 1),
            new("kVA", 1000),
        ]);

    /// <inheritdoc/>
    public static VoltAmperes Of(double value) => new(value);
}

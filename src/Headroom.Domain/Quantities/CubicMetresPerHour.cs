namespace Headroom.Domain.Quantities;

/// <summary>A flow of air [m³/h].</summary>
/// <param name="Value">The number [m³/h].</param>
public readonly record struct CubicMetresPerHour(double Value) : IQuantity<CubicMetresPerHour>
{
    /// <inheritdoc/>
    public static UnitTable Units { get; } = new(
        "a flow of air",
        [
            new("m3/h", 1, 0, "m³/h"),
            new("CFM", 1.69901082, 0, "cfm"),
            new("l/s", 3.6),
        ]);

    /// <inheritdoc/>
    public static CubicMetresPerHour Of(double value) => new(value);
}

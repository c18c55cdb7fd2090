namespace Headroom.Domain.Quantities;

/// <summary>A frame rate [1/s].</summary>
/// <param name="Value">The number [1/s].</param>
public readonly record struct PacketsPerSecond(double Value) : IQuantity<PacketsPerSecond>
{
    /// <inheritdoc/>
    public static UnitTable Units { get; } = new(
        "a frame rate",
        [
            new("frames/s", 1, 0, "pps"),
            new("kframes/s", 1e3, 0, "kpps"),
            new("Mframes/s", 1e6, 0, "Mpps"),
        ]);

    /// <inheritdoc/>
    public static PacketsPerSecond Of(double value) => new(value);
}

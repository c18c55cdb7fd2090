namespace Headroom.Domain.Quantities;

/// <summary>A data rate [bit/s].</summary>
/// <param name="Value">The number [bit/s].</param>
public readonly record struct BitsPerSecond(double Value) : IQuantity<BitsPerSecond>
{
    /// <inheritdoc/>
    public static UnitTable Units { get; } = new(
        "a data rate",
        [
            new("b/s", 1, 0, "bit/s"),
            new("kb/s", 1e3, 0, "kbit/s"),
            new("Mb/s", 1e6, 0, "Mbit/s"),
            new("Gb/s", 1e9, 0, "Gbit/s"),
        ]);

    /// <inheritdoc/>
    public static BitsPerSecond Of(double value) => new(value);
}

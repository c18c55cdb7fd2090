namespace Headroom.Domain.Quantities;

/// <summary>An amount of data [octets].</summary>
/// <param name="Value">The number [octets].</param>
public readonly record struct Octets(double Value) : IQuantity<Octets>
{
    /// <inheritdoc/>
    public static UnitTable Units { get; } = new(
        "an amount of data",
        [
            new("TB", 1e12),
            new("TiB", 1_099_511_627_776),
            new("GB", 1e9),
            new("GiB", 1_073_741_824),
        ]);

    /// <inheritdoc/>
    public static Octets Of(double value) => new(value);
}

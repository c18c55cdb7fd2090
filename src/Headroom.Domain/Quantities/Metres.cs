namespace Headroom.Domain.Quantities;

/// <summary>A length or distance [m].</summary>
/// <param name="Value">The number [m].</param>
public readonly record struct Metres(double Value) : IQuantity<Metres>
{
    /// <inheritdoc/>
    public static UnitTable Units { get; } = new(
        "a length",
        [
            new("m", 1, 0, "metre", "metres", "meter", "meters"),
            new("mm", 0.001),
            new("cm", 0.01),
            new("km", 1000),
            new("ft", 0.3048, 0, "feet", "foot"),
            new("in", 0.0254, 0, "inch", "inches"),
        ]);

    /// <inheritdoc/>
    public static Metres Of(double value) => new(value);
}

namespace Headroom.Domain.Quantities;

/// <summary>The speed of a fan [1/min].</summary>
/// <param name="Value">The number [1/min].</param>
public readonly record struct RevolutionsPerMinute(double Value) : IQuantity<RevolutionsPerMinute>
{
    /// <inheritdoc/>
    public static UnitTable Units { get; } = new(
        "a speed of rotation",
        [
            new("rpm", 1, 0, "1/min"),
        ]);

    /// <inheritdoc/>
    public static RevolutionsPerMinute Of(double value) => new(value);
}

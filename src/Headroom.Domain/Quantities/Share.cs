namespace Headroom.Domain.Quantities;

/// <summary>A part of a whole, 1 being all of it.</summary>
/// <param name="Value">The number [1].</param>
public readonly record struct Share(double Value) : IQuantity<Share>
{
    /// <inheritdoc/>
    public static UnitTable Units { get; } = new(
        "a share",
        [
            new("%", 0.01, 0, "percent"),
        ]);

    /// <inheritdoc/>
    public static Share Of(double value) => new(value);
}

namespace Headroom.Domain.Quantities;

/// <summary>A duration [s].</summary>
/// <param name="Value">The number [s].</param>
public readonly record struct Seconds(double Value) : IQuantity<Seconds>
{
    /// <inheritdoc/>
    public static UnitTable Units { get; } = new(
        "a duration",
        [
            new("s", 1, 0, "sec", "seconds"),
            new("ms", 0.001),
            new("min", 60, 0, "minutes", "minute"),
            new("h", 3600, 0, "hours", "hour"),
            new("d", 86400, 0, "days", "day"),
            new("years", 31557600, 0, "year", "a"),
        ]);

    /// <inheritdoc/>
    public static Seconds Of(double value) => new(value);
}

using Headroom.Domain.Quantities;

namespace Headroom.Domain.Shown;

/// <summary>Chooses the unit in which figures are shown: metric as worked out, or feet, inches, pounds and °F. Watts, volts and amperes are the same everywhere.</summary>
/// <param name="imperial">True for feet, inches, pounds and °F.</param>
public sealed class ShownUnits(bool imperial)
{
    private static readonly Unit Same = new("", 1);

    private static readonly (UnitTable Table, string From, string To)[] Imperial =
    [
        (Metres.Units, "m", "ft"),
        (Metres.Units, "cm", "in"),
        (Metres.Units, "mm", "in"),
        (Celsius.Units, "°C", "°F"),
        (Kelvins.Units, "K", "°F"),
        (Kilograms.Units, "kg", "lb"),
        (CubicMetresPerHour.Units, "m3/h", "CFM"),
    ];

    /// <summary>Metric, as worked out.</summary>
    public static ShownUnits Metric { get; } = new(imperial: false);

    /// <summary>Whether feet and pounds are shown.</summary>
    public bool IsImperial => imperial;

    /// <summary>How numbers of a unit are shown.</summary>
    /// <param name="unit">The unit in which they were worked out.</param>
    public ShownUnit Of(string unit)
    {
        var plain = unit.Replace('³', '3');
        if (imperial && Array.Find(Imperial, row => row.From == plain) is { Table: { } table, To: { } to })
            return new(to, to, table.Find(plain)!, table.Find(to)!);
        var symbol = unit == "m3/h" ? "m³/h" : unit;
        return new(symbol, unit == "°C" ? "K" : unit == "dB(A)" ? "dB" : symbol, Same, Same);
    }
}

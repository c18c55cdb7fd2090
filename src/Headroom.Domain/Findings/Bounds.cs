using System.Globalization;
using Headroom.Domain.Quantities;

namespace Headroom.Domain.Findings;

/// <summary>The range in which a value makes sense; check, message, schema and manual all read it.</summary>
/// <param name="Least">The least value allowed, in the base unit.</param>
/// <param name="Most">The most allowed, in the base unit.</param>
public sealed record Bounds(double Least, double Most)
{
    /// <summary>Says whether a value lies inside.</summary>
    /// <param name="value">The value in the base unit; not-a-number lies in no range.</param>
    /// <returns>True when inside or on the edge.</returns>
    public bool Contains(double value) => value >= Least && value <= Most;

    /// <summary>The range in words, in a unit: <c>between 0.1 and 1000 m</c>.</summary>
    /// <param name="unit">The unit to show it in.</param>
    /// <returns>The words.</returns>
    public string InWords(Unit unit) => string.Create(
        CultureInfo.InvariantCulture,
        $"between {Round(unit.FromBase(Least))} and {Round(unit.FromBase(Most))} {unit.Symbol}");

    private static string Round(double value) => Math.Round(value, 6).ToString("0.######", CultureInfo.InvariantCulture);
}

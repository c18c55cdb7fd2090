using System.Globalization;
using Headroom.Domain.Quantities;
using Headroom.Domain.Shown;

namespace Headroom.Documents.Drawings.Plates;

/// <summary>Lengths as they stand at dimension lines: metres and millimetres, or feet and inches.</summary>
internal static class Dimension
{
    private const double InchMetres = 0.0254;
    private const int InchesInFoot = 12;

    /// <summary>A length of a room: <c>4.8 m</c>, or <c>15 ft 9 in</c>.</summary>
    /// <param name="metres">The length [m].</param>
    /// <param name="units">The units of the paper.</param>
    public static string OfRoom(double metres, ShownUnits units)
    {
        if (!units.IsImperial)
            return Numbers.Show(metres, "m");
        var (feet, inches) = Math.DivRem((int)Math.Round(metres / InchMetres), InchesInFoot);
        return string.Create(CultureInfo.InvariantCulture, $"{(feet != 0 ? $"{feet} ft" : "")}{(feet != 0 && inches != 0 ? " " : "")}{(inches != 0 || feet == 0 ? $"{inches} in" : "")}");
    }

    /// <summary>A length of equipment: <c>412 mm</c>, or <c>16.2 in</c>.</summary>
    /// <param name="metres">The length [m].</param>
    /// <param name="units">The units of the paper.</param>
    public static string OfThing(double metres, ShownUnits units) =>
        units.IsImperial ? Numbers.Show(Math.Round(metres / InchMetres, 1), "in") : Numbers.Show(Math.Round(metres * 1000), "mm");

    /// <summary>An area: <c>9.6 m²</c>, or <c>103 ft²</c>.</summary>
    /// <param name="squareMetres">The area [m²].</param>
    /// <param name="units">The units of the paper.</param>
    public static string OfArea(double squareMetres, ShownUnits units) =>
        units.IsImperial ? Numbers.Show(Math.Round(SquareMetres.Units.Find("ft2")!.FromBase(squareMetres), 1), "ft²") : Numbers.Show(Math.Round(squareMetres, 2), "m²");
}

namespace Headroom.Engineering.Acoustics;

/// <summary>The box-shaped surface round a device that stands on a plane, on which its sound is taken.</summary>
public static class BoxSurface
{
    /// <summary>Area of the surface at a distance from the faces.</summary>
    /// <param name="length">Length of the device [m].</param>
    /// <param name="width">Width of it [m].</param>
    /// <param name="height">Height of it [m].</param>
    /// <param name="metres">The distance [m]; above 0.</param>
    /// <returns>The area [m²].</returns>
    /// <remarks>Source: ISO 3744:2010 and ISO 3746:2010, 4(ab + bc + ca) with a = l1/2 + d, b = l2/2 + d, c = l3 + d.</remarks>
    public static double SquareMetres(double length, double width, double height, double metres)
    {
        Require.Above0(metres, "m");
        var (a, b, c) = (length / 2 + metres, width / 2 + metres, height + metres);
        return 4 * (a * b + b * c + c * a);
    }

    /// <summary>Sound power level less the mean pressure level on a surface.</summary>
    /// <param name="squareMetres">Its area [m²]; above 0.</param>
    /// <returns>The difference [dB].</returns>
    /// <remarks>Source: ISO 3744:2010, 10 lg(S / 1 m²).</remarks>
    public static double PowerLessLevel(double squareMetres)
    {
        Require.Above0(squareMetres, "m²");
        return 10 * Math.Log10(squareMetres);
    }

    /// <summary>How much the room adds to the mean level on a surface.</summary>
    /// <param name="squareMetres">Area of the surface [m²].</param>
    /// <param name="absorption">Absorption area of the room [m²]; above 0.</param>
    /// <returns>The correction K2 [dB]; ISO 3744 allows up to 4, ISO 3746 up to 7.</returns>
    /// <remarks>Source: ISO 3744:2010 and ISO 3746:2010, 10 lg(1 + 4 S/A).</remarks>
    public static double K2(double squareMetres, double absorption)
    {
        Require.Above0(absorption, "m²");
        return 10 * Math.Log10(1 + 4 * squareMetres / absorption);
    }
}

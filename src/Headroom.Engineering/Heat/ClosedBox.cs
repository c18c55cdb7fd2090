namespace Headroom.Engineering.Heat;

/// <summary>How warm a closed cupboard or enclosure grows.</summary>
public static class ClosedBox
{
    /// <summary>Painted sheet steel as enclosures have it [W/(m²·K)], seen in two suppliers' pages.</summary>
    public const double SheetSteel = 5.5;

    /// <summary>How the rise grows with the watts by the chart method for closed enclosures, from memory [1].</summary>
    public const double ClosedExponent = 0.804;

    /// <summary>The same with vents [1].</summary>
    public const double VentedExponent = 0.715;

    // Still air on a face, radiation included: order of ISO 6946 for rooms, from memory [W/(m²·K)].
    private const double Film = 8;

    /// <summary>Heat through a wall of layers.</summary>
    /// <param name="resistance">Σ thickness / conductivity of its layers and still air between [m²·K/W]; 0 or more.</param>
    /// <returns>The coefficient [W/(m²·K)].</returns>
    /// <remarks>Source: ISO 6946 in its order, from memory: 1 / (1/8 + Σ d/λ + 1/8).</remarks>
    public static double Coefficient(double resistance)
    {
        Require.AtLeast(0, resistance, "m²·K/W");
        return 1 / (2 / Film + resistance);
    }

    /// <summary>The area of a sheet-steel enclosure that gives off heat.</summary>
    /// <param name="position">How it stands.</param>
    /// <param name="width">Width [m]; above 0.</param>
    /// <param name="depth">Depth [m]; above 0.</param>
    /// <param name="height">Height [m]; above 0.</param>
    /// <returns>The area [m²].</returns>
    /// <remarks>Source: IEC TR 60890, effective cooling surface, from memory.</remarks>
    public static double EffectiveArea(BoxPosition position, double width, double depth, double height)
    {
        Require.Above0(width, "m");
        Require.Above0(depth, "m");
        Require.Above0(height, "m");
        var (w, d, h) = (width, depth, height);
        return position switch
        {
            BoxPosition.Free => 1.8 * h * (w + d) + 1.4 * w * d,
            BoxPosition.BackToWall => 1.4 * w * (h + d) + 1.8 * d * h,
            BoxPosition.EndOfRow => 1.4 * d * (h + w) + 1.8 * w * h,
            BoxPosition.EndOfRowBackToWall => 1.4 * h * (w + d) + 1.4 * w * d,
            BoxPosition.MiddleOfRow => 1.8 * w * h + 1.4 * w * d + d * h,
            BoxPosition.MiddleOfRowBackToWall => 1.4 * w * (h + d) + d * h,
            _ => 1.4 * w * h + 0.7 * w * d + d * h,
        };
    }

    /// <summary>How much warmer it is inside when all has settled.</summary>
    /// <param name="watts">The heat left inside [W]; 0 or more.</param>
    /// <param name="wattsPerKelvin">What its faces let through [W/K]; above 0.</param>
    /// <returns>The rise of the mean air [K]; under the roof it is a third to a half more.</returns>
    /// <remarks>Source: balance of heat, P / (U A).</remarks>
    public static double Rise(double watts, double wattsPerKelvin)
    {
        Require.Above0(wattsPerKelvin, "W/K");
        return watts / wattsPerKelvin;
    }

    /// <summary>How the rise grows with the watts by the chart method.</summary>
    /// <param name="ratio">New watts / old watts [1]; above 0.</param>
    /// <param name="exponent">The exponent [1].</param>
    /// <returns>New rise / old rise [1].</returns>
    /// <remarks>Source: IEC TR 60890, from memory: P^0.804 closed, P^0.715 with vents.</remarks>
    public static double RiseRatio(double ratio, double exponent)
    {
        Require.Above0(ratio, "");
        return Math.Pow(ratio, exponent);
    }

    /// <summary>Case of a fanless box above the air.</summary>
    /// <param name="watts">What it turns into heat [W]; 0 or more.</param>
    /// <param name="squareMetres">Area of the faces that touch the air [m²]; above 0.</param>
    /// <returns>The rise of the case [K].</returns>
    /// <remarks>Source: P / (h A) with 9 W/(m²·K) for a small painted box in still air, from memory (8 to 11).</remarks>
    public static double CaseRise(double watts, double squareMetres)
    {
        Require.Above0(squareMetres, "m²");
        return watts / (CaseFilm * squareMetres);
    }

    // Natural convection and radiation of a small painted box, from memory: 8 to 11 [W/(m²·K)].
    private const double CaseFilm = 9;
}

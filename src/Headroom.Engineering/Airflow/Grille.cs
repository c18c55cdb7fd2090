namespace Headroom.Engineering.Airflow;

/// <summary>What grilles, guards, filters and walls in front of a fan take.</summary>
public static class Grille
{
    // A thin sharp-edged plate: the jet through its holes narrows to this and loses what it gained.
    private const double SharpEdge = 0.707;

    /// <summary>Loss of a thin perforated plate, over the dynamic pressure of the air before it.</summary>
    /// <param name="freeShare">Free area as a share of the opening [1]; above 0, at most 1.</param>
    /// <returns>The coefficient [1]; good to about a third in the small grilles of switches.</returns>
    /// <remarks>Source: Idelchik, diagram 8-1, from memory: (0.707 √(1 − f) + 1 − f)² / f²; sharp edges, hole Reynolds number above 10⁵.</remarks>
    public static double Coefficient(double freeShare)
    {
        Require.Share(freeShare);
        var narrowed = SharpEdge * Math.Sqrt(1 - freeShare) + 1 - freeShare;
        return narrowed * narrowed / (freeShare * freeShare);
    }

    /// <summary>Pressure lost in it at a speed of the air.</summary>
    /// <param name="coefficient">The coefficient [1]; 0 or more.</param>
    /// <param name="metresPerSecond">Speed of the air before it [m/s]; 0 or more.</param>
    /// <param name="density">Density of the air [kg/m³]; above 0.</param>
    /// <returns>The pressure [Pa].</returns>
    /// <remarks>Source: definition of a loss coefficient, ζ ρ v² / 2.</remarks>
    public static double Pressure(double coefficient, double metresPerSecond, double density) =>
        coefficient * density * metresPerSecond * metresPerSecond / 2;

    /// <summary>Resistance of a coefficient at an opening.</summary>
    /// <param name="coefficient">The coefficient [1]; 0 or more.</param>
    /// <param name="squareMetres">Area of the opening [m²]; above 0.</param>
    /// <param name="density">Density of the air [kg/m³]; above 0.</param>
    /// <returns>The resistance [Pa/(m³/s)²].</returns>
    /// <remarks>Source: ζ ρ / (2 A²).</remarks>
    public static double Resistance(double coefficient, double squareMetres, double density)
    {
        Require.Above0(squareMetres, "m²");
        return coefficient * density / (2 * squareMetres * squareMetres);
    }

    /// <summary>How free a round outlet is in front of a wall: the ring between them over the opening.</summary>
    /// <param name="gapMetres">Gap to the wall [m]; 0 or more.</param>
    /// <param name="diameterMetres">Diameter of the opening [m]; above 0.</param>
    /// <returns>The ratio [1]; below 1 the wall chokes it, 0 is a closed box.</returns>
    /// <remarks>Source: π D g over π D² / 4.</remarks>
    public static double RingShare(double gapMetres, double diameterMetres)
    {
        Require.AtLeast(0, gapMetres, "m");
        Require.Above0(diameterMetres, "m");
        return 4 * gapMetres / diameterMetres;
    }

    /// <summary>Loss of a ring in front of a wall, over the dynamic pressure in the opening.</summary>
    /// <param name="ringShare">The ring over the opening [1]; above 0.</param>
    /// <returns>The coefficient [1]: the dynamic pressure in the ring is lost.</returns>
    /// <remarks>Source: outlet loss, (A / A_ring)²; a turn of the air is not counted, which is on the light side.</remarks>
    public static double RingCoefficient(double ringShare)
    {
        Require.Above0(ringShare, "");
        return 1 / (ringShare * ringShare);
    }

    /// <summary>Pressure lost in a filter mat, which is laminar: it grows with the speed.</summary>
    /// <param name="pressure">Pressure at the speed it is declared for [Pa]; 0 or more.</param>
    /// <param name="declaredAt">That speed [m/s]; above 0.</param>
    /// <param name="metresPerSecond">The speed now [m/s]; 0 or more.</param>
    /// <returns>The pressure [Pa] when clean; twice that when it is to be changed.</returns>
    /// <remarks>Source: laminar flow; common practice, no source.</remarks>
    public static double FilterPressure(double pressure, double declaredAt, double metresPerSecond)
    {
        Require.Above0(declaredAt, "m/s");
        return pressure * metresPerSecond / declaredAt;
    }
}

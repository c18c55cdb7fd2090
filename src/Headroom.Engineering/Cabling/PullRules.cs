namespace Headroom.Engineering.Cabling;

/// <summary>What spares a cable while it is pulled in: bends, distances, force.</summary>
public static class PullRules
{
    /// <summary>Most length between two points from which a cable can be pulled [m]. Source: TIA-569, from memory; a cable maker's guide says the same.</summary>
    public const double BetweenPointsMetres = 30;

    /// <summary>Most right-angle bends between two such points. Source: as <see cref="BetweenPointsMetres"/>.</summary>
    public const int BetweenPointsBends = 2;

    /// <summary>Most force on a four-pair cable [N]. Source: TIA-568.0.</summary>
    public const double MostNewtons = 110;

    /// <summary>Least radius of an installed four-pair cable as a multiple of its diameter [1]. Source: TIA-568.0-D/-E, from memory.</summary>
    public const double CableDiameters = 4;

    /// <summary>Least radius of a cord as a multiple of its diameter [1]. Source: as <see cref="CableDiameters"/>.</summary>
    public const double CordDiameters = 1;

    private const double LargeConduitMetres = 0.050;
    private const double SmallConduitDiameters = 6;
    private const double LargeConduitDiameters = 10;

    /// <summary>Least radius of a bend in a conduit [m].</summary>
    /// <param name="insideMetres">Its inner diameter [m]; above 0.</param>
    /// <returns>Six inner diameters up to 50 mm, ten above [m].</returns>
    /// <remarks>Source: TIA-569, from memory.</remarks>
    public static double ConduitRadiusMetres(double insideMetres)
    {
        Require.Above0(insideMetres, "m");
        return insideMetres * (insideMetres <= LargeConduitMetres + 1e-12 ? SmallConduitDiameters : LargeConduitDiameters);
    }

    /// <summary>Least radius of an installed cable or a cord [m].</summary>
    /// <param name="diameterMetres">Its outer diameter [m]; above 0.</param>
    /// <param name="cord">True for a cord.</param>
    /// <returns>Four outer diameters, one for a cord [m].</returns>
    /// <remarks>Source: TIA-568.0-D/-E, from memory.</remarks>
    public static double CableRadiusMetres(double diameterMetres, bool cord)
    {
        Require.Above0(diameterMetres, "m");
        return diameterMetres * (cord ? CordDiameters : CableDiameters);
    }
}

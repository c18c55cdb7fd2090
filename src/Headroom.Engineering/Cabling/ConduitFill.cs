namespace Headroom.Engineering.Cabling;

/// <summary>How full a conduit or tray may be, and how full it is.</summary>
public static class ConduitFill
{
    /// <summary>Most fill of a short piece of up to 0.6 m [1]. Source: NFPA 70, chapter 9.</summary>
    public const double NippleShare = 0.60;

    /// <summary>The longest such piece [m]. Source: as <see cref="NippleShare"/>.</summary>
    public const double NippleMetres = 0.6;

    /// <summary>Most fill of a tray or basket [1]: it is full to the eye then, because of the gaps. Source: TIA-569, from memory.</summary>
    public const double TrayShare = 0.50;

    /// <summary>Most depth of a tray [m]. Source: TIA-569, from memory.</summary>
    public const double TrayDepthMetres = 0.150;

    // From 0.8 on, a fraction of equal conductors may be counted as one more (NFPA 70, chapter 9, note 7, from memory).
    private const double RoundUpFrom = 0.8;

    /// <summary>Most fill of a conduit [1].</summary>
    /// <param name="cables">Cables in it; 1 or more.</param>
    /// <returns>0.53 for one, 0.31 for two, 0.40 for three or more.</returns>
    /// <remarks>Source: NFPA 70, chapter 9, Table 1.</remarks>
    public static double MostShare(int cables) => cables switch { <= 1 => 0.53, 2 => 0.31, _ => 0.40 };

    /// <summary>Cross-section of something round [mm²].</summary>
    /// <param name="diameterMillimetres">Diameter [mm]; 0 or more.</param>
    /// <returns>Area [mm²]. A cable of many pairs counts as one round conductor of its outer diameter.</returns>
    /// <remarks>Source: area of a circle; NFPA 70, chapter 9, note 9, from memory.</remarks>
    public static double AreaSquareMillimetres(double diameterMillimetres)
    {
        Require.AtLeast(0, diameterMillimetres, "mm");
        return Math.PI * diameterMillimetres * diameterMillimetres / 4;
    }

    /// <summary>Part of a conduit that equal cables fill [1].</summary>
    /// <param name="cables">How many.</param>
    /// <param name="cableMillimetres">Their outer diameter [mm]; above 0.</param>
    /// <param name="insideMillimetres">Inner diameter of the conduit [mm]; above 0.</param>
    /// <returns>N d² / D² [1].</returns>
    /// <remarks>Source: NFPA 70, chapter 9, Table 1: cross-section of the cables over that of the conduit.</remarks>
    public static double Share(int cables, double cableMillimetres, double insideMillimetres)
    {
        Require.Above0(insideMillimetres, "mm");
        return cables * AreaSquareMillimetres(cableMillimetres) / AreaSquareMillimetres(insideMillimetres);
    }

    /// <summary>Most equal cables by area alone.</summary>
    /// <param name="cableMillimetres">Their outer diameter [mm]; above 0.</param>
    /// <param name="areaSquareMillimetres">Inner cross-section [mm²]; above 0.</param>
    /// <param name="share">Most fill [1].</param>
    /// <param name="roundUp">True to count a fraction of 0.8 or more as one more, for equal cables.</param>
    /// <returns>How many, 0 or more.</returns>
    /// <remarks>Source: area; rounding: NFPA 70, chapter 9, note 7, from memory.</remarks>
    public static int MostCables(double cableMillimetres, double areaSquareMillimetres, double share, bool roundUp = false)
    {
        Require.Above0(cableMillimetres, "mm");
        Require.Above0(areaSquareMillimetres, "mm²");
        var cables = share * areaSquareMillimetres / AreaSquareMillimetres(cableMillimetres);
        return (int)Math.Floor(cables + (roundUp ? 1 - RoundUpFrom : 0) + 1e-9);
    }

    /// <summary>Says whether so much cable in a conduit is allowed.</summary>
    /// <param name="cables">Cables in it; 1 or more.</param>
    /// <param name="share">Part they fill [1].</param>
    /// <returns>True up to the most fill for so many.</returns>
    /// <remarks>Source: NFPA 70, chapter 9, Table 1.</remarks>
    public static bool Fits(int cables, double share) => share <= MostShare(cables) + 1e-9;
}

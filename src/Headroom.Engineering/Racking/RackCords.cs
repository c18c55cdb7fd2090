namespace Headroom.Engineering.Racking;

/// <summary>Cords within a rack, and the room their plugs need.</summary>
public static class RackCords
{
    /// <summary>Slack at each end of a cord, so that a plug can be pulled [m]. Source: common practice, no source.</summary>
    public const double SlackMetres = 0.1;

    /// <summary>A plug with its boot in front of a port [mm]. Source: common practice, no source.</summary>
    public const double PlugMillimetres = 35;

    /// <summary>Outer diameter of a cord where nobody wrote one [mm]. Source: common practice, no source.</summary>
    public const double UsualCordMillimetres = 6;

    /// <summary>Cords that a cable manager of one unit takes. Source: common practice, no source.</summary>
    public const int CordsOfAManager = 24;

    /// <summary>Room behind a unit for its plugs where nobody surveyed it [mm]. Source: common practice, no source.</summary>
    public const double UsualPlugsBehindMillimetres = 60;

    /// <summary>The cord that reaches from any port of one unit to any port of another at the same side: from the middle to the side, along the rail, and back.</summary>
    /// <param name="unitsApart">From the middle of one to the middle of the other [U]; 0 or more.</param>
    /// <returns>Length [m].</returns>
    /// <remarks>Source: half the width of a panel twice (IEC 60297), the height between, and slack at both ends.</remarks>
    public static double NeededMetres(double unitsApart)
    {
        Require.AtLeast(0, unitsApart, "U");
        return (RackHeight.PanelWidthMillimetres + RackHeight.SpaceMillimetres(unitsApart)) / 1000 + 2 * SlackMetres;
    }

    /// <summary>The room that plugs need between the front rails and a door: the plug and one bend of the cord.</summary>
    /// <param name="cordMillimetres">Outer diameter of the cord [mm]; above 0.</param>
    /// <returns>Room [mm].</returns>
    /// <remarks>Source: a bend of four diameters (TIA-568.0, from memory) behind the plug.</remarks>
    public static double FrontMillimetres(double cordMillimetres)
    {
        Require.Above0(cordMillimetres, "mm");
        return PlugMillimetres + 4 * cordMillimetres;
    }
}

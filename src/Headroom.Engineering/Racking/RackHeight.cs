namespace Headroom.Engineering.Racking;

/// <summary>Heights and widths of the 19-inch rack.</summary>
public static class RackHeight
{
    /// <summary>One rack unit [mm]: 1.75 in. Source: EIA/ECA-310-E, IEC 60297.</summary>
    public const double UnitMillimetres = 44.45;

    /// <summary>Width of a panel over its ears [mm]. Source: IEC 60297, from memory.</summary>
    public const double PanelWidthMillimetres = 482.6;

    /// <summary>Between the two columns of holes [mm]. Source: IEC 60297, from memory.</summary>
    public const double HoleColumnsMillimetres = 465.1;

    /// <summary>Least clear opening between the rails [mm]. Source: IEC 60297, from memory.</summary>
    public const double OpeningMillimetres = 450;

    // A panel is 1/32 inch lower than its units, so that neighbours do not rub.
    private const double PanelPlayMillimetres = 25.4 / 32;

    /// <summary>From hole to hole upwards within a unit [mm]; the last straddles the border to the next unit. Source: EIA/ECA-310-E.</summary>
    public static IReadOnlyList<double> HolePitchMillimetres => [15.875, 15.875, 12.7];

    /// <summary>Mounting height of rack units [mm].</summary>
    /// <param name="units">How many [U]; 0 or more.</param>
    /// <returns>Height [mm].</returns>
    /// <remarks>Source: EIA/ECA-310-E, IEC 60297.</remarks>
    public static double SpaceMillimetres(double units)
    {
        Require.AtLeast(0, units, "U");
        return units * UnitMillimetres;
    }

    /// <summary>Height of a panel of so many units [mm].</summary>
    /// <param name="units">How many [U]; above 0.</param>
    /// <returns>Height [mm], 1/32 in below the units'.</returns>
    /// <remarks>Source: IEC 60297, from memory.</remarks>
    public static double PanelMillimetres(double units)
    {
        Require.Above0(units, "U");
        return units * UnitMillimetres - PanelPlayMillimetres;
    }
}

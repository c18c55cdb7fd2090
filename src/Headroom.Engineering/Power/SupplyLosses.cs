namespace Headroom.Engineering.Power;

/// <summary>What the supply of a switch takes from the mains, and what of it stays as heat where the switch stands.</summary>
public static class SupplyLosses
{
    // International table BTU, 1055.05585262 J, over an hour of 3600 s: 3.412142 BTU/h to the watt.
    private const double JoulesPerBtu = 1055.05585262;
    private const double SecondsPerHour = 3600;

    /// <summary>Power taken from the mains [W].</summary>
    /// <param name="baseWatts">Power of the switch itself, behind its supply [W]; 0 or more.</param>
    /// <param name="poeWatts">Power that leaves on the cables [W]; 0 or more.</param>
    /// <param name="efficiency">Efficiency of the supply [1]; above 0, at most 1.</param>
    /// <param name="pathEfficiency">Efficiency of the path from the supply to the ports [1]; above 0, at most 1.</param>
    /// <returns>Mains power [W].</returns>
    /// <remarks>Source: balance of power.</remarks>
    public static double MainsWatts(double baseWatts, double poeWatts, double efficiency, double pathEfficiency = 1)
    {
        Require.AtLeast(0, baseWatts, "W");
        Require.AtLeast(0, poeWatts, "W");
        Require.Share(efficiency);
        Require.Share(pathEfficiency);
        return (baseWatts + poeWatts / pathEfficiency) / efficiency;
    }

    /// <summary>Heat that stays in the cupboard [W]: what comes from the mains less what leaves on the cables.</summary>
    /// <param name="baseWatts">Power of the switch itself, behind its supply [W]; 0 or more.</param>
    /// <param name="poeWatts">Power that leaves on the cables [W]; 0 or more.</param>
    /// <param name="efficiency">Efficiency of the supply [1]; above 0, at most 1.</param>
    /// <param name="pathEfficiency">Efficiency of the path from the supply to the ports [1]; above 0, at most 1.</param>
    /// <returns>Heat [W].</returns>
    /// <remarks>Source: balance of power. The standby supply still has to deliver all of the mains power.</remarks>
    public static double HeatLeftWatts(double baseWatts, double poeWatts, double efficiency, double pathEfficiency = 1) =>
        MainsWatts(baseWatts, poeWatts, efficiency, pathEfficiency) - poeWatts;

    /// <summary>Heat in the unit of air-conditioning sheets [BTU/h].</summary>
    /// <param name="watts">Heat [W]; finite.</param>
    /// <returns>Heat [BTU/h].</returns>
    /// <remarks>Source: definition of the international table BTU.</remarks>
    public static double BtuPerHour(double watts) => watts * SecondsPerHour / JoulesPerBtu;

    /// <summary>Efficiency of a supply at a load, from the points printed for it [1].</summary>
    /// <param name="loadShare">Load as a share of the rating [1]; 0 or more.</param>
    /// <param name="points">Printed points, by rising load.</param>
    /// <returns>Straight line between points, the nearest point outside them; null when no point is known.</returns>
    /// <remarks>Source: linear interpolation. Below the lowest point a real supply does worse than this says.</remarks>
    public static double? EfficiencyAt(double loadShare, IReadOnlyList<(double LoadShare, double Efficiency)> points)
    {
        Require.AtLeast(0, loadShare, "as a share");
        if (points.Count == 0)
            return null;
        if (loadShare <= points[0].LoadShare)
            return points[0].Efficiency;
        for (var i = 1; i < points.Count; i++)
        {
            var (low, high) = (points[i - 1], points[i]);
            if (loadShare <= high.LoadShare)
                return low.Efficiency + (high.Efficiency - low.Efficiency) * (loadShare - low.LoadShare) / (high.LoadShare - low.LoadShare);
        }
        return points[^1].Efficiency;
    }
}

namespace Headroom.Engineering.Sums.Heat;

/// <summary>The sums of heat and air.</summary>
internal static class HeatSums
{
    /// <summary>The name of the discipline.</summary>
    public const string Discipline = "heat";

    /// <summary>All of them.</summary>
    public static IReadOnlyList<Sum> All =>
    [
        CupboardRise.Sum, VentsNeeded.Sum, AirNeeded.Sum, OutletRise.Sum, FanSwap.Sum, GrilleOpened.Sum, FanOnVolts.Sum, OutletGap.Sum, InletLimit.Sum, FanlessCase.Sum, FanLife.Sum,
    ];
}

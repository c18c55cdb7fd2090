namespace Headroom.Engineering.Sums.Power;

/// <summary>The sums of power over the cable.</summary>
internal static class PowerSums
{
    /// <summary>The name of the discipline.</summary>
    public const string Discipline = "power";

    /// <summary>All of them.</summary>
    public static IReadOnlyList<Sum> All =>
    [
        FarEndVolts.Sum, LongestRun.Sum, LoopResistance.Sum, PowerBudget.Sum, ColdStart.Sum, ClassOfDraw.Sum, InjectorWatts.Sum, SupplyDraw.Sum, Inrush.Sum,
    ];
}

namespace Headroom.Engineering.Sums.Standby;

/// <summary>The sums of standby supplies.</summary>
internal static class StandbySums
{
    /// <summary>The name of the discipline.</summary>
    public const string Discipline = "standby";

    /// <summary>All of them.</summary>
    public static IReadOnlyList<Sum> All =>
    [
        BatteryMinutes.Sum, StagedMinutes.Sum, StandbyLoad.Sum, StandbyPortCap.Sum, BatteryByCurrent.Sum, LithiumMinutes.Sum,
        BatteryCold.Sum, RechargeTime.Sum, GeneratorTime.Sum,
    ];
}

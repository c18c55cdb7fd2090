namespace Headroom.Engineering.Sums.Racking;

/// <summary>The sums of racks.</summary>
internal static class RackingSums
{
    /// <summary>The name of the discipline.</summary>
    public const string Discipline = "racking";

    /// <summary>All of them.</summary>
    public static IReadOnlyList<Sum> All => [RackRoom.Sum, CordInRack.Sum, StripCurrent.Sum];
}

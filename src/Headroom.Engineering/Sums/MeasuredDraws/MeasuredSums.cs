namespace Headroom.Engineering.Sums.MeasuredDraws;

/// <summary>The sums of measured draws.</summary>
internal static class MeasuredSums
{
    /// <summary>The name of the discipline.</summary>
    public const string Discipline = "measured-draws";

    /// <summary>All of them.</summary>
    public static IReadOnlyList<Sum> All => [DrawFromSites.Sum, DrawInStates.Sum];
}

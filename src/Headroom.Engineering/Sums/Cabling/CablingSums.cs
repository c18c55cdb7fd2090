namespace Headroom.Engineering.Sums.Cabling;

/// <summary>The sums of cabling: copper, fibre, pathways.</summary>
internal static class CablingSums
{
    /// <summary>The name of the discipline.</summary>
    public const string Discipline = "cabling";

    /// <summary>All of them.</summary>
    public static IReadOnlyList<Sum> All =>
    [
        LinkLength.Sum, CordLength.Sum, BundleRise.Sum, ConduitFilled.Sum, Separation.Sum, FibreLink.Sum, FibreReach.Sum, BoxesOfCable.Sum,
    ];
}

namespace Headroom.Engineering.Sums.Reliability;

/// <summary>The sums of failures and spares.</summary>
internal static class ReliabilitySums
{
    /// <summary>The name of the discipline.</summary>
    public const string Discipline = "reliability";

    /// <summary>All of them.</summary>
    public static IReadOnlyList<Sum> All => [FailureRate.Sum, CompareFailures.Sum, Spares.Sum, AvailabilityOf.Sum, BurnIn.Sum];
}

namespace Headroom.Engineering.Sums.Traffic;

/// <summary>The sums of traffic.</summary>
internal static class TrafficSums
{
    /// <summary>The name of the discipline.</summary>
    public const string Discipline = "traffic";

    /// <summary>All of them.</summary>
    public static IReadOnlyList<Sum> All =>
        [CallsAtOnce.Sum, VoiceOfCall.Sum, BusyUsers.Sum, RecorderDays.Sum, LineWait.Sum, Oversubscribed.Sum, MarkOf.Sum];
}

namespace Headroom.Engineering.Sums.Acoustics;

/// <summary>The sums of sound.</summary>
internal static class AcousticSums
{
    /// <summary>The name of the discipline.</summary>
    public const string Discipline = "sound";

    /// <summary>All of them.</summary>
    public static IReadOnlyList<Sum> All =>
    [
        LevelAtDistance.Sum, RoomLevel.Sum, NextRoom.Sum, Barrier.Sum, SumOfSources.Sum, SourceAlone.Sum, FanSpeed.Sum,
        SpectrumLevel.Sum, NoiseRatingOf.Sum, ReadingAndPrediction.Sum,
    ];
}

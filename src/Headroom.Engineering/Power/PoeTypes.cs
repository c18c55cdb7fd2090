namespace Headroom.Engineering.Power;

/// <summary>The types of IEEE 802.3 power as a table.</summary>
/// <remarks>
/// Source: IEEE 802.3, Tables 33-1, 33-11 and 33-18 (types 1 and 2) and 145-1 and 145-16 (types 3 and 4). Voltages and currents
/// were seen in secondary documents, 1.92 A and 99.9 W in a comment quoting the 2022 edition; the rest is from memory.
/// </remarks>
public static class PoeTypes
{
    /// <summary>All types, in order.</summary>
    public static IReadOnlyList<PoeTypeLimits> All { get; } =
    [
        new(PoeType.Type1, LeastPairs: 2, MostPairs: 2, SourceVoltsMin: 44, SourceVoltsMax: 57, DeviceVoltsMin: 37.0,
            AmperesPerPairset: 0.350, ChannelOhmsPerPairset: 20, MostSourceWatts: 15.4, CeilingWatts: null, HighestClass: 3),
        new(PoeType.Type2, LeastPairs: 2, MostPairs: 2, SourceVoltsMin: 50, SourceVoltsMax: 57, DeviceVoltsMin: 42.5,
            AmperesPerPairset: 0.600, ChannelOhmsPerPairset: 12.5, MostSourceWatts: 30, CeilingWatts: null, HighestClass: 4),
        new(PoeType.Type3, LeastPairs: 2, MostPairs: 4, SourceVoltsMin: 50, SourceVoltsMax: 57, DeviceVoltsMin: 42.5,
            AmperesPerPairset: 0.600, ChannelOhmsPerPairset: 12.5, MostSourceWatts: 60, CeilingWatts: null, HighestClass: 6),
        new(PoeType.Type4, LeastPairs: 2, MostPairs: 4, SourceVoltsMin: 52, SourceVoltsMax: 57, DeviceVoltsMin: 41.1,
            AmperesPerPairset: 0.960, ChannelOhmsPerPairset: 12.5, MostSourceWatts: 90, CeilingWatts: 99.9, HighestClass: 8),
    ];

    /// <summary>The row of one type.</summary>
    public static PoeTypeLimits Of(PoeType type)
    {
        Require.Between(0, All.Count - 1, (int)type, nameof(type));
        return All[(int)type];
    }
}

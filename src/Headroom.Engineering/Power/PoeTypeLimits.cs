namespace Headroom.Engineering.Power;

/// <summary>What the standard says of one type.</summary>
/// <param name="Type">The type the row is about.</param>
/// <param name="LeastPairs">Fewest pairs that carry power, 2.</param>
/// <param name="MostPairs">Most pairs that carry power, 2 or 4.</param>
/// <param name="SourceVoltsMin">Least voltage at the source [V].</param>
/// <param name="SourceVoltsMax">Most voltage at the source [V].</param>
/// <param name="DeviceVoltsMin">Least voltage at a device of the highest class at full power [V].</param>
/// <param name="AmperesPerPairset">Most current on one pairset (two pairs) [A].</param>
/// <param name="ChannelOhmsPerPairset">Loop resistance of one pairset that the standard reckons with [Ω].</param>
/// <param name="MostSourceWatts">Class power of the highest class, at the source [W].</param>
/// <param name="CeilingWatts">Most power that a source may ever deliver [W]; null where no separate ceiling is known.</param>
/// <param name="HighestClass">Highest class that a source of the type grants.</param>
public sealed record PoeTypeLimits(
    PoeType Type, int LeastPairs, int MostPairs, double SourceVoltsMin, double SourceVoltsMax, double DeviceVoltsMin,
    double AmperesPerPairset, double ChannelOhmsPerPairset, double MostSourceWatts, double? CeilingWatts, int HighestClass)
{
    /// <summary>Most current on all the pairs together [A].</summary>
    public double MostAmperes => AmperesPerPairset * MostPairs / 2;

    /// <summary>Loop resistance that the standard reckons with when all the pairs carry power [Ω].</summary>
    public double ChannelOhms => ChannelOhmsPerPairset * 2 / MostPairs;
}

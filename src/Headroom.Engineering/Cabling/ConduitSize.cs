namespace Headroom.Engineering.Cabling;

/// <summary>A trade size of thin-walled steel conduit (EMT).</summary>
/// <param name="Metric">Its metric designator.</param>
/// <param name="Trade">Its trade size in inches, as said.</param>
/// <param name="InsideInches">Inner diameter [in].</param>
/// <param name="InsideMillimetres">Inner diameter as rounded in the metric column [mm].</param>
public sealed record ConduitSize(int Metric, string Trade, double InsideInches, double InsideMillimetres)
{
    /// <summary>The sizes, from the smallest. Source: NFPA 70, chapter 9, Table 4; the two largest and the metric diameters from memory.</summary>
    public static IReadOnlyList<ConduitSize> All =>
    [
        new(16, "1/2", 0.622, 15.8), new(21, "3/4", 0.824, 20.9), new(27, "1", 1.049, 26.6), new(35, "1 1/4", 1.380, 35.1),
        new(41, "1 1/2", 1.610, 40.9), new(53, "2", 2.067, 52.5), new(63, "2 1/2", 2.731, 69.4), new(78, "3", 3.356, 85.2),
        new(91, "3 1/2", 3.834, 97.4), new(103, "4", 4.334, 110.1),
    ];
}

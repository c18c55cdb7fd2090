using Headroom.Engineering.Sums.Acoustics;
using Headroom.Engineering.Sums.Addressing;
using Headroom.Engineering.Sums.Cabling;
using Headroom.Engineering.Sums.Heat;
using Headroom.Engineering.Sums.MeasuredDraws;
using Headroom.Engineering.Sums.Money;
using Headroom.Engineering.Sums.Power;
using Headroom.Engineering.Sums.Racking;
using Headroom.Engineering.Sums.Reliability;
using Headroom.Engineering.Sums.Standby;
using Headroom.Engineering.Sums.Traffic;

namespace Headroom.Engineering.Sums;

/// <summary>All sums there are. The table is made when somebody first asks for one; nothing else pays for it.</summary>
public static class AllSums
{
    private static readonly Lazy<IReadOnlyList<Sum>> Table = new(() => [.. MeasuredSums.All, .. PowerSums.All, .. CablingSums.All, .. HeatSums.All, .. AcousticSums.All, .. StandbySums.All, .. TrafficSums.All, .. ReliabilitySums.All, .. RackingSums.All, .. AddressingSums.All, .. MoneySums.All]);

    /// <summary>The sums, discipline by discipline.</summary>
    public static IReadOnlyList<Sum> All => Table.Value;

    /// <summary>The sum of a name.</summary>
    /// <param name="name">The name.</param>
    /// <returns>The sum; null when there is none.</returns>
    public static Sum? Find(string name) => All.FirstOrDefault(sum => sum.Name == name);
}

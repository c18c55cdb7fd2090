using System.Globalization;
using Headroom.Engineering.Standby;

namespace Headroom.References.Tests.Standby;

/// <summary>The block of the reference, 7.5 Ah, new, at 25 °C.</summary>
internal static class Block
{
    internal static readonly double[] Minutes = Column(0);

    internal static readonly double[] Watts = Column(2);

    /// <summary>Down to 1.75 V a cell.</summary>
    internal static DischargeTable Usual { get; } = new(Seconds, Watts);

    /// <summary>Down to 1.60 V a cell.</summary>
    internal static DischargeTable Deep { get; } = new(Seconds, Column(1));

    internal static double[] Seconds => Array.ConvertAll(Minutes, minutes => minutes * 60);

    private static double[] Column(int at) => [.. Csv.Read("standby-table-inputs").Select(row => double.Parse(row[at], CultureInfo.InvariantCulture))];
}

using Headroom.Engineering.Standby;
using Headroom.References.Tests.PowerAndCabling;

namespace Headroom.References.Tests.Standby;

internal static class TableFigures
{
    internal static Figure Work(Printed printed)
    {
        var n = PrintedNumbers.In(printed.What);
        return printed.Id switch
        {
            "1.3/deep" => Block.Deep.Seconds(n[0]) / 60,
            "1.3/scaled" => Block.Usual.Times(n[1] / 7.5).Seconds(n[0]) / 60,
            "1.3/derated" => Block.Usual.Seconds(ConverterLoad.BlockWatts(n[0], 1, Product(n.Skip(1)))) / 60,
            "1.3/power" => Block.Usual.Watts(n[0] * 60) / Product(n.Skip(1)),
            "1.3/closet" => Closet(printed, n),
            "1.3/dropped" => printed.What.Contains("least", StringComparison.Ordinal) ? Dropped().Min() : Dropped().Max(),
            "1.3/exponent" => Math.Log(n[1] / n[0]) / Math.Log(Block.Usual.Watts(n[0] * 60)!.Value / Block.Usual.Watts(n[1] * 60)!.Value),
            "1.3/14ah" => n[0] / Block.Usual.Times(n[2] / 7.5).Watts(n[1] * 60),
            _ => Block.Usual.Seconds(n[0]) / 60,
        };
    }

    private static Figure Closet(Printed printed, double[] n)
    {
        var battery = ConverterLoad.BatteryWatts(n[0], n[1]);
        if (n.Length == 2)
            return battery;
        var block = ConverterLoad.BlockWatts(battery, (int)n[2], Product(n.Skip(3)));
        return printed.Unit == "W" ? block : Block.Usual.Seconds(block) / 60;
    }

    // The first and last rows cannot be told by the others.
    private static IEnumerable<double> Dropped() => Enumerable.Range(1, Block.Minutes.Length - 2).Select(row =>
    {
        var table = new DischargeTable([.. Block.Seconds.Where((_, at) => at != row)], [.. Block.Watts.Where((_, at) => at != row)]);
        return 100 * (table.Seconds(Block.Watts[row])!.Value / (Block.Minutes[row] * 60) - 1);
    });

    private static double Product(IEnumerable<double> factors) => factors.Aggregate(1.0, (product, factor) => product * factor);
}

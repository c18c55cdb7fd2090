using Headroom.Engineering.Standby;
using Headroom.References.Tests.PowerAndCabling;

namespace Headroom.References.Tests.Standby;

internal static class StandbyLoadFigures
{
    internal static Figure Work(Printed printed)
    {
        var n = PrintedNumbers.In(printed.What);
        return printed.Id switch
        {
            "1.2/both" when printed.What.Contains("fits", StringComparison.Ordinal) => n[0] <= ConverterLoad.MostWatts(n[2], n[3], n[1]),
            "1.2/va" or "1.2/both" => ConverterLoad.ApparentVoltAmperes(n[0], n[1]),
            "1.2/hidden" => ConverterLoad.MostWatts(1e6, n[0], n[1]),
            "1.2/no-load" => ConverterLoad.BatteryWatts(n[0], n[1], n[2]),
            "1.2/charge" => ConverterLoad.AmpereHours(ConverterLoad.BatteryWatts(n[0] * n[1] * 1000, n[2]) * n[5] * n[6], n[3], n[4]),
            _ => Facility(printed, n),
        };
    }

    private static Figure Facility(Printed printed, double[] n)
    {
        var load = n[0] * n[1] * 1000;
        var battery = n.Length > 2 ? ConverterLoad.BatteryWatts(load, n[2]) : load;
        var cells = printed.Unit == "W";
        var factors = n.Skip(3).Take(n.Length - 3 - (cells ? 1 : 0)).Aggregate(1.0, (product, factor) => product * factor);
        return ConverterLoad.BlockWatts(battery, cells ? (int)n[^1] : 1, factors) / (cells ? 1 : 1000);
    }
}

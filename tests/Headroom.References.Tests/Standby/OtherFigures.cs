using Headroom.Engineering.Standby;
using Headroom.References.Tests.PowerAndCabling;

namespace Headroom.References.Tests.Standby;

internal static class OtherFigures
{
    internal static Figure Work(Printed printed)
    {
        var n = PrintedNumbers.In(printed.What);
        return printed.Id switch
        {
            "1.5/lithium" => LithiumRuntime.Seconds(n[0], n[1], n[2], n[3]) / 60,
            "1.5/midspan" => Held(printed, ConverterLoad.BatteryWatts(n[0], n[1], n[2]), n.Length > 3 ? (int)n[3] : 1),
            "1.5/by-mains" => Held(printed, ConverterLoad.BatteryWatts(ConverterLoad.BatteryWatts(45, 0.88, 4), n[0]), printed.Unit == "W" ? 1 : 2),
            "1.5/charger" => Recharging.ChargerAmperes(n[0], n[1], n[2], n[3]),
            "1.5/recharge" => Recharging.BulkHours(n[0], n[2], n[1]),
            _ => Generator.Hours(n[0], n[1], n[2]),
        };
    }

    private static Figure Held(Printed printed, double battery, int blocks)
    {
        var block = ConverterLoad.BlockWatts(battery, blocks);
        return printed.Unit == "W" ? block : Block.Usual.Seconds(block) / 60;
    }
}

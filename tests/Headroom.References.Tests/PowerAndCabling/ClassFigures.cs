using Headroom.Engineering.Power;

namespace Headroom.References.Tests.PowerAndCabling;

internal static class ClassFigures
{
    internal static Figure Work(Printed printed) => Figure(PoeClasses.Of(printed.Id[^1] - '0'), printed);

    private static Figure Figure(PoeClass row, Printed printed) => printed.What switch
    {
        "source power" => PoeClasses.SourceWatts(row.Number),
        "source power at types 3 and 4" => PoeClasses.SourceWatts(row.Number, PoeType.Type3),
        "device power" => PoeClasses.DeviceWatts(row.Number),
        "device power, first edition" => PoeClasses.FirstEditionDeviceWatts,
        "types of device" => References.Tests.Figure.List(PoeClasses.DeviceTypes(row.Number).Select(type => (int)type + 1), ", "),
        "pairs" => PoeClasses.FourPair(row.Number) ? 4 : 2,
        "four pairs allowed at types 3 and 4" => PoeClasses.FourPairAllowed(row.Number, PoeType.Type3),
        "source voltage, least" => row.SourceVoltsMin,
        "device voltage, least" => PoeClasses.LeastDeviceVolts(row.Number),
        "current at the least source voltage" => row.MostAmperes,
        "class events, fewest" => row.LeastEvents,
        "class events, most" => row.MostEvents,
        "signature, events 1 and 2" => row.FirstSignature,
        "signature, event 3 on" => row.LaterSignature,
        _ => PrintedTables.Nothing(printed),
    };
}

using Headroom.Engineering.Power;

namespace Headroom.References.Tests.PowerAndCabling;

internal static class DualClassFigures
{
    internal static Figure Work(Printed printed) => Figure(PoeClasses.OfDual(printed.Id[^1] - '0'), printed);

    private static Figure Figure(DualSignatureClass row, Printed printed) => printed.What switch
    {
        "source power per pairset" => row.SourceWatts,
        "device power per pairset" => row.DeviceWatts,
        "source voltage, least" => row.SourceVoltsMin,
        "source power with class 3 on the other pairset" => row.SourceWatts + PoeClasses.OfDual(3).SourceWatts,
        _ => PrintedTables.Nothing(printed),
    };
}

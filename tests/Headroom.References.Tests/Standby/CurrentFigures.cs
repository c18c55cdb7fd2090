using Headroom.Engineering.Standby;
using Headroom.References.Tests.PowerAndCabling;

namespace Headroom.References.Tests.Standby;

internal static class CurrentFigures
{
    internal static Figure Work(Printed printed)
    {
        var n = PrintedNumbers.In(printed.What);
        return printed.Id switch
        {
            "1.4/exponent" => Peukert.Exponent(n[0], n[1], n[2], n[3]),
            "1.4/one-ampere" or "1.4/wrong" => Peukert.HoursByOneAmpere(n[0], n[2], n[1]),
            _ => Peukert.Hours(n[0], n[1], n[3], n[2]),
        };
    }
}

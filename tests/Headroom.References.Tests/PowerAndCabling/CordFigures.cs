using System.Globalization;
using Headroom.Engineering.Cabling;

namespace Headroom.References.Tests.PowerAndCabling;

internal static class CordFigures
{
    internal static Figure Work(Printed printed) => printed.What switch
    {
        "the standard's table" => Cords(printed.Id),
        "work-area part, most" => CordRule.OutletEndMetres,
        "trade example for 28 AWG" => Cords(printed.Id),
        "trade example, whole channel" => 82.5 + Cords(printed.Id),
        "derating of 22, 24, 26, 28 AWG" => Figure.List(new[] { 22.0, 24, 26, 28 }.Select(awg => CordRule.Derating(Conductor.AreaSquareMillimetres(awg))?.ToString(CultureInfo.InvariantCulture))),
        _ => Cords(printed.What),
    };

    // A row by its id is worked out from its first line, which says H and D.
    private static double? Cords(string idOrWhat)
    {
        var what = idOrWhat.StartsWith("CO-", StringComparison.Ordinal) ? Csv.Read("cords").First(row => row[0] == idOrWhat)[1] : idOrWhat;
        var numbers = PrintedNumbers.In(what);
        return CordRule.LongestMetres(numbers[0], numbers[1]);
    }
}

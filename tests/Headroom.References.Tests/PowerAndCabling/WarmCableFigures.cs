using System.Globalization;
using Headroom.Engineering.Cabling;

namespace Headroom.References.Tests.PowerAndCabling;

internal static class WarmCableFigures
{
    internal static Figure Work(Printed printed)
    {
        var celsius = double.Parse(printed.Id[2..], CultureInfo.InvariantCulture);
        return printed.What switch
        {
            "k, unscreened" => WarmLength.LossFactor(celsius, screened: false) - 1,
            "k, screened" => WarmLength.LossFactor(celsius, screened: true) - 1,
            "longest link, unscreened" or "the standard's annex G" => WarmLength.LongestMetres(celsius, screened: false),
            "longest link, screened" => WarmLength.LongestMetres(celsius, screened: true),
            _ => PrintedTables.Nothing(printed),
        };
    }
}

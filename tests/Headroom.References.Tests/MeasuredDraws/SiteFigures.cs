using Headroom.Engineering.MeasuredDraws;
using Headroom.References.Tests.PowerAndCabling;

namespace Headroom.References.Tests.MeasuredDraws;

internal static class SiteFigures
{
    private static readonly SiteReadings[] Three = [new("a", [5.1, 5.4, 5.0]), new("b", [5.9, 6.1]), new("c", [5.2, 5.3, 5.2, 5.5])];

    internal static Figure Work(Printed printed)
    {
        var n = PrintedNumbers.In(printed.What);
        return printed.Id switch
        {
            "5.2/11" => Together(Three, 1.0 / 6, new DrawPrior(n[2], n[3], n[1]), (n[0], n[4])),
            "5.2/12" => Together(Three[..1], n[0], new DrawPrior(n[3], n[4], n[2]), (n[1], n[5])),
            _ => Together(Three, 1.0 / 6, DrawPrior.OfSites(n[1]), (n[0], n[2])),
        };
    }

    private static double Together(SiteReadings[] sites, double unitWatts, DrawPrior prior, (double Units, double Chance) of) =>
        DrawModel.Fit(sites, unitWatts, prior).Together((int)of.Units, of.Chance);
}

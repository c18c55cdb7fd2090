using System.Globalization;
using Headroom.Engineering.Cabling;

namespace Headroom.References.Tests.PowerAndCabling;

internal static class PathwayFigures
{
    private const double NewtonsPerPound = 4.4482216;

    internal static Figure Work(Printed printed) => printed.Id[..2] switch
    {
        "EM" => Size(printed),
        "FL" => Fill(printed),
        _ => Rule(printed),
    };

    private static Figure Size(Printed printed)
    {
        var size = ConduitSize.All.Single(size => size.Metric == int.Parse(printed.Id[3..], CultureInfo.InvariantCulture));
        var whole = ConduitFill.AreaSquareMillimetres(size.InsideInches);
        return printed.What switch
        {
            "inner diameter" => size.InsideInches,
            "inner diameter, metric column" => size.InsideMillimetres,
            "100 %" => whole,
            "53 %" => whole * ConduitFill.MostShare(1),
            "31 %" => whole * ConduitFill.MostShare(2),
            "40 %" => whole * ConduitFill.MostShare(3),
            "40 % in mm²" => ConduitFill.AreaSquareMillimetres(size.InsideMillimetres) * ConduitFill.MostShare(3),
            _ => PrintedTables.Nothing(printed),
        };
    }

    private static Figure Fill(Printed printed)
    {
        var what = printed.What;
        if (what.StartsWith("most of", StringComparison.Ordinal))
            return string.Join(',', PrintedNumbers.In(what)[1..^1].Select(inside => Most(PrintedNumbers.In(what)[0], inside, roundUp: false)));
        if (what.StartsWith("6.1 mm in 40.9", StringComparison.Ordinal))
            return Most(6.1, 40.9, roundUp: true);
        if (what.StartsWith("most in a short", StringComparison.Ordinal))
            return 100 * ConduitFill.NippleShare;
        var numbers = PrintedNumbers.In(Csv.Read("pathways").First(row => row[0] == printed.Id)[1]);
        var count = what.StartsWith("29 cables", StringComparison.Ordinal) ? 29 : (int)numbers[0];
        var share = ConduitFill.Share(count, numbers[1], numbers[2]);
        return what switch
        {
            "limit" => 100 * ConduitFill.MostShare(count),
            "result" => ConduitFill.Fits(count, share) ? "pass" : "fail",
            _ => 100 * share,
        };
    }

    private static int Most(double cable, double inside, bool roundUp) =>
        ConduitFill.MostCables(cable, ConduitFill.AreaSquareMillimetres(inside), ConduitFill.MostShare(3), roundUp);

    private static Figure Rule(Printed printed) => printed.What switch
    {
        "between pull points, most" => PullRules.BetweenPointsMetres,
        "right-angle bends, most" => PullRules.BetweenPointsBends,
        "radius of a conduit of 50 mm" => 1000 * PullRules.ConduitRadiusMetres(0.050),
        "radius of a conduit of 51 mm" => 1000 * PullRules.ConduitRadiusMetres(0.051),
        "radius of a cable of 6 mm" => 1000 * PullRules.CableRadiusMetres(0.006, cord: false),
        "radius of a cord of 6 mm" => 1000 * PullRules.CableRadiusMetres(0.006, cord: true),
        "pull on a four-pair cable, most" => PullRules.MostNewtons,
        "the same" => PullRules.MostNewtons / NewtonsPerPound,
        "tray, most fill" => 100 * ConduitFill.TrayShare,
        "100 × 50 mm tray: 5.2, 6.1, 7.5 mm" => Tray(5000),
        "200 × 50 mm tray: 5.2, 6.1, 7.5 mm" => Tray(10000),
        "tray depth, most" => 1000 * ConduitFill.TrayDepthMetres,
        _ => PrintedTables.Nothing(printed),
    };

    private static Figure Tray(double area) => Figure.List(new[] { 5.2, 6.1, 7.5 }.Select(d => ConduitFill.MostCables(d, area, ConduitFill.TrayShare)));
}

using System.Globalization;
using System.Text.RegularExpressions;
using Headroom.Engineering.Power;

namespace Headroom.References.Tests.PowerAndCabling;

internal static partial class SupplyFigures
{
    internal static Figure Work(Printed printed) => printed.Id[0] == 'E' ? Efficiency(printed) : Heat(printed);

    // The curve goes through the printed points of its level; the program answers at and between them.
    private static Figure Efficiency(Printed printed)
    {
        var (level, load) = Point(printed);
        var points = Csv.Read("supplies-and-heat").Select(Printed.From)
            .Where(row => row.Id == printed.Id && row.Source.EndsWith("are the input", StringComparison.Ordinal) && Point(row).Level == level)
            .Select(row => (Point(row).LoadShare, row.Number / 100)).ToList();
        return 100 * SupplyLosses.EfficiencyAt(load, points);
    }

    private static (string Level, double LoadShare) Point(Printed printed)
    {
        var parts = printed.What.Split(" at ");
        return (parts[0], double.Parse(parts[1].TrimEnd(' ', '%'), CultureInfo.InvariantCulture) / 100);
    }

    private static Figure Heat(Printed printed)
    {
        if (Question().Match(printed.What) is not { Success: true } asked)
            return SupplyLosses.BtuPerHour(double.Parse(printed.What.TrimEnd(' ', 'W'), CultureInfo.InvariantCulture));
        var (own, poe, supply) = (Number(asked, "own"), Number(asked, "poe"), Number(asked, "supply"));
        return asked.Groups["what"].Value switch
        {
            "mains" => SupplyLosses.MainsWatts(own, poe, supply, asked.Groups["path"].Success ? Number(asked, "path") : 1),
            "heat left" => SupplyLosses.HeatLeftWatts(own, poe, supply),
            "heat left in BTU/h" => SupplyLosses.BtuPerHour(SupplyLosses.HeatLeftWatts(own, poe, supply)),
            _ => PrintedTables.Nothing(printed),
        };
    }

    private static double Number(Match asked, string group) => double.Parse(asked.Groups[group].Value, CultureInfo.InvariantCulture);

    // "base 35 W, PoE 132 W, supply 0.90, path 0.97: mains"
    [GeneratedRegex(@"^base (?<own>\d+) W, PoE (?<poe>\d+) W, supply (?<supply>[\d.]+)(, path (?<path>[\d.]+))?: (?<what>.+)$", RegexOptions.ExplicitCapture)]
    private static partial Regex Question();
}

using System.Globalization;
using System.Text.RegularExpressions;
using Headroom.Engineering.Power;

namespace Headroom.References.Tests.PowerAndCabling;

internal static partial class BudgetFigures
{
    private static readonly double[] MixReserved =
        [.. Ports(10, PoeClasses.SourceWatts(2)), .. Ports(8, PoeClasses.SourceWatts(3)), .. Ports(6, PoeClasses.SourceWatts(4))];

    private static readonly double[] MixMeasured = [.. Ports(10, 3.5), .. Ports(8, 4), .. Ports(6, 5.5)];

    internal static Figure Work(Printed printed) =>
        Question().Match(printed.What) is { Success: true } asked ? Filled(asked, printed) : Sums(printed);

    private static Figure Sums(Printed printed) => printed.What switch
    {
        "class 4 port from power-up" => PoeClasses.SourceWatts(4),
        "class 4 port, 13.0 W negotiated" or "class 4 negotiated to 13.0 W: reserved" => Reservation.ForClass(13.0, 4, PoeType.Type2),
        "class 4 negotiated to 13.0 W: freed" => PoeClasses.SourceWatts(4) - Reservation.ForClass(13.0, 4, PoeType.Type2),
        "draws of 90, 90, 80 W by falling priority in 250 W, served" => Figure.List(PortBudget.Fill(250, [90, 90, 80], AtRefusal.Stop).Granted),
        "measured 5.5 W with a margin of 1 W" => Autoclass.ReserveWatts(measuredWatts: 5.5, marginWatts: 1, 4, PoeType.Type3),
        "measured 29.5 W with a margin of 1 W, class 4" => Autoclass.ReserveWatts(measuredWatts: 29.5, marginWatts: 1, 4, PoeType.Type3),
        "24 × class 4 reserved" => Used(Ports(24, PoeClasses.SourceWatts(4))),
        "10 class 2 + 8 class 3 + 6 class 4 reserved" => Used(MixReserved),
        "measured, 10 × 3.5 + 8 × 4 + 6 × 5.5 W" => Used(MixMeasured),
        "250 W less the reserved mix" => 250 - Used(MixReserved),
        "250 W less the measured mix" => 250 - Used(MixMeasured),
        _ => PrintedTables.Nothing(printed),
    };

    // Everything asked for, from a budget that cannot run out.
    private static double Used(double[] asks) => PortBudget.Fill(100_000, asks, AtRefusal.Skip).GrantedWatts;

    private static Figure Filled(Match asked, Printed printed)
    {
        var watts = asked.Groups["class"].Success ? PoeClasses.SourceWatts(Number(asked, "class")) : double.Parse(asked.Groups["watts"].Value, CultureInfo.InvariantCulture);
        var budget = Number(asked, "budget");
        var fill = PortBudget.Fill(budget, Ports(Number(asked, "ports"), watts), AtRefusal.Skip);
        return asked.Groups["what"].Value switch
        {
            "used" => fill.GrantedWatts,
            "left" => fill.LeftWatts,
            "share" => 100 * fill.GrantedWatts / budget,
            "granted" => fill.Granted.Count(granted => granted),
            "denied" => fill.Granted.Count(granted => !granted),
            _ => PrintedTables.Nothing(printed),
        };
    }

    private static double[] Ports(int count, double watts) => [.. Enumerable.Repeat(watts, count)];

    private static int Number(Match asked, string group) => int.Parse(asked.Groups[group].Value, CultureInfo.InvariantCulture);

    // "24 × class 4 in 250 W: granted", "24 × 5.5 W in 250 W: used"
    [GeneratedRegex(@"^(?<ports>\d+) × (class (?<class>\d)|(?<watts>[\d.]+) W) in (?<budget>\d+) W: (?<what>\w+)$", RegexOptions.ExplicitCapture)]
    private static partial Regex Question();
}

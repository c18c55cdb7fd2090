using Headroom.Engineering.Cabling;

namespace Headroom.References.Tests.PowerAndCabling;

internal static class FibreFigures
{
    private const double TwoMatedPairs = 1.5;

    internal static Figure Work(Printed printed) => printed.Id[..2] switch
    {
        "FI" => Component(printed),
        "FE" => Port(printed),
        _ => Link(printed),
    };

    private static Figure Component(Printed printed) => printed.What switch
    {
        "multimode at 850 nm by ISO and IEEE" => FibreLoss.IsoMultimodeDecibelsPerKilometre,
        "OS1a at 1310 nm" => FibreLoss.DecibelsPerKilometre("OS1a", 1310),
        "outside plant at 1310 nm" => FibreLoss.DecibelsPerKilometre("outside plant", 1310),
        "OS2 at 1310 and 1550 nm" => Both("OS2", 1310, 1550),
        "mated pair, most" => FibreLoss.PairDecibels,
        "mated pair, usual" => FibreLoss.UsualPairDecibels,
        "splice, most" => FibreLoss.SpliceDecibels,
        _ => Both(printed.What[..3], 850, 1300),
    };

    private static Figure Both(string category, double one, double other) => Figure.List(
        new[] { one, other }.Select(nm => FibreLoss.DecibelsPerKilometre(category, nm)?.ToString(System.Globalization.CultureInfo.InvariantCulture)));

    private static Figure Port(Printed printed)
    {
        if (printed.What.StartsWith("derived: ", StringComparison.Ordinal) || printed.What.StartsWith("channel loss against", StringComparison.Ordinal))
            return Derived(printed);
        var parts = printed.What.Split(", ");
        var port = FibrePort.Of(parts[0], parts[1]);
        return parts[2] switch
        {
            "reach" => port?.ReachMetres,
            "least length" => port?.LeastMetres,
            "power budget" => port?.PowerBudgetDecibels,
            "channel loss" => port?.ChannelDecibels,
            _ => PrintedTables.Nothing(printed),
        };
    }

    // The sum that reproduces it: kilometres times loss, and what connections may take.
    private static Figure Derived(Printed printed)
    {
        var text = Csv.Read("fibre").First(row => row[0] == printed.Id && row[1].StartsWith("derived", StringComparison.Ordinal))[1];
        var numbers = PrintedNumbers.In(text);
        var pairs = numbers[2] == TwoMatedPairs ? 2 : 0;
        return FibreLoss.Decibels(1000 * numbers[0], numbers[1], pairs, 0) + (pairs == 0 ? numbers[2] : 0);
    }

    private static Figure Link(Printed printed)
    {
        var (metres, loss, port) = CaseOf(printed.Id);
        var channel = port.ChannelDecibels;
        return printed.What switch
        {
            "left" => channel - loss,
            "missing" => loss - channel,
            var what when what.StartsWith("against", StringComparison.Ordinal) => port.Carries(metres, loss) ? "pass" : "fail",
            _ => loss,
        };
    }

    private static (double Metres, double Loss, FibrePort Port) CaseOf(string id) => id switch
    {
        "FW-1" => Case("OM3", (150, 850), (2, 0), "10GBASE-SR"),
        "FW-2" => (150, FibreLoss.Decibels(150, FibreLoss.IsoMultimodeDecibelsPerKilometre, 2, 0), FibrePort.Of("10GBASE-SR", "OM3")!),
        "FW-3" => Case("OM4", (300, 850), (2, 2), "10GBASE-SR"),
        "FW-4" => Case("OM3", (300, 850), (4, 0), "10GBASE-SR"),
        "FW-5" => Case("OM4", (120, 850), (4, 0), "10GBASE-SR"),
        "FW-6" => Case("OS2", (2000, 1310), (2, 4), "1000BASE-LX"),
        _ => Case("OS2", (9000, 1310), (2, 4), "10GBASE-LR"),
    };

    private static (double, double, FibrePort) Case(string fibre, (double Metres, double Nanometres) at, (int Pairs, int Splices) on, string type) =>
        (at.Metres, FibreLoss.Decibels(at.Metres, FibreLoss.DecibelsPerKilometre(fibre, at.Nanometres)!.Value, on.Pairs, on.Splices), FibrePort.Of(type, fibre)!);
}

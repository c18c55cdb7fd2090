using System.Globalization;
using Headroom.Engineering.Cabling;

namespace Headroom.References.Tests.PowerAndCabling;

internal static class BundleFigures
{
    // Class 8 and class 6 at their least source voltage, current in one of eight conductors (802.3 class table).
    private const double Class8Watts = 90;
    private const double Class8Amperes = 90.0 / 52 / 4;
    private const double Class6Watts = 60;
    private const double Class6Amperes = 60.0 / 50 / 4;

    internal static Figure Work(Printed printed) => printed.Id[0] switch
    {
        'H' => Heat(printed),
        'N' when printed.Id[1] == '-' => Table(printed),
        'N' => Case(printed),
        _ => Guidance(printed),
    };

    private static Figure Guidance(Printed printed) => printed.What switch
    {
        "target rise in a bundle" => BundleHeat.TargetKelvins,
        "target of the edition of 2009" => BundleHeat.OldTargetKelvins,
        "recommended bundle, most" => BundleHeat.MostCables,
        "highest current considered" => 1000 * BundleHeat.MostAmperesPerPair,
        "estimate for 100 cables, 24 AWG, 0.6 A a pair, two pairs" => Plain(4),
        "the same, all pairs" => Plain(8),
        "ambient lower, all pairs at the current of type 2" => BundleHeat.TypeTwoDeratingKelvins(1),
        "the same, half the pairs" => BundleHeat.TypeTwoDeratingKelvins(0.5),
        "common jacket" => BundleHeat.CommonJacketCelsius,
        var what when what.StartsWith("7.2 K at 600 mA", StringComparison.Ordinal) => Scaled(PrintedNumbers.In(what)[^1] / 1000),
        _ => PrintedTables.Nothing(printed),
    };

    // 7.2 K times the ratio of two heats of one cable: the square law is the program's, the 7.2 K the print's.
    private static double Scaled(double pairAmperes) =>
        7.2 * BundleHeat.WattsPerMetre(8, pairAmperes / 2, 1) / BundleHeat.WattsPerMetre(8, 0.3, 1);

    private static double Plain(int conductors) => BundleHeat.WattsPerMetre(conductors, 0.3, OhmsPerMetre(24)) * BundleHeat.Resistance(100);

    private static Figure Table(Printed printed)
    {
        var awg = double.Parse(printed.Id[2..], CultureInfo.InvariantCulture);
        var cables = (int)PrintedNumbers.In(printed.What.Split(';')[0])[^1];
        return Figure.List(new[] { 60.0, 75, 90 }.Select(rating => BundleAmpacity.MostAmperes(awg, cables, rating)?.ToString(CultureInfo.InvariantCulture) ?? "none"));
    }

    private static Figure Case(Printed printed)
    {
        if (printed.What.StartsWith("class 6", StringComparison.Ordinal))
            return BundleAmpacity.Applies(Class6Watts, Class6Amperes, 24);
        if (printed.What.EndsWith("applies", StringComparison.Ordinal))
            return BundleAmpacity.Applies(Class8Watts, Class8Amperes, 24);
        var numbers = PrintedNumbers.In(printed.What);
        var most = BundleAmpacity.MostAmperes(numbers[1], (int)numbers[3], numbers[2]);
        return $"{(Class8Amperes <= most ? "allowed" : "not allowed")}, {most?.ToString(CultureInfo.InvariantCulture)}";
    }

    private static Figure Heat(Printed printed)
    {
        var (what, numbers) = (printed.What.Split(':')[0], PrintedNumbers.In(printed.What.Split(": ")[1]));
        var heat = BundleHeat.WattsPerMetre((int)numbers[2], numbers[1], OhmsPerMetre(numbers[0]));
        var cables = (int)numbers[3];
        return what switch
        {
            "p20" => heat,
            "F" => BundleHeat.Resistance(cables),
            "rise at 20 °C copper" => heat * BundleHeat.Resistance(cables),
            "rise with feedback" => BundleHeat.RiseKelvins(heat, cables, numbers[4]),
            _ => PrintedTables.Nothing(printed),
        };
    }

    private static double OhmsPerMetre(double awg) => Conductor.OhmsPerMetre(Conductor.AreaSquareMillimetres(awg), 20);
}

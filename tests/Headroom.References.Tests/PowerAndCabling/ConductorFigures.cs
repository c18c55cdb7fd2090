using System.Globalization;
using Headroom.Engineering.Cabling;

namespace Headroom.References.Tests.PowerAndCabling;

internal static class ConductorFigures
{
    private const double MetresPerThousandFeet = 304.8;
    private static readonly double Area24 = Conductor.AreaSquareMillimetres(24);

    internal static Figure Work(Printed printed) =>
        printed.Id[0] == 'W' ? Wire(double.Parse(printed.Id[2..], CultureInfo.InvariantCulture), printed) : Constants(printed);

    private static Figure Constants(Printed printed) => printed.What switch
    {
        "diameter of gauge 36, where the power is 0" => Conductor.DiameterMillimetres(36),
        "diameter of gauge -3, one whole ratio of 92" => Conductor.DiameterMillimetres(-3),
        "resistivity of copper at 20 °C" => Conductor.CopperOhmSquareMillimetresPerMetre * 1e-6 / 1e-8,
        "temperature coefficient" => Conductor.TemperatureCoefficientPerKelvin,
        "R(70 °C) / R20 = 1 + 0.00393 × 50" => Conductor.OhmsPerMetre(Area24, 70) / Conductor.OhmsPerMetre(Area24, 20),
        "temperature at 1.1965" => Conductor.CelsiusForFactor(1.1965),
        "24 AWG at 63 % of copper" => Conductor.OhmsPerMetre(Area24, 20, 0.63) * 1000,
        "the same as a multiple of copper" => Conductor.OhmsPerMetre(Area24, 20, 0.63) / Conductor.OhmsPerMetre(Area24, 20),
        var what when what.StartsWith("factor at ", StringComparison.Ordinal) => Conductor.Factor(double.Parse(what.Split(' ')[2], CultureInfo.InvariantCulture)),
        _ => PrintedTables.Nothing(printed),
    };

    private static Figure Wire(double awg, Printed printed)
    {
        var area = Conductor.AreaSquareMillimetres(awg);
        return printed.What switch
        {
            "diameter" => Conductor.DiameterMillimetres(awg),
            "cross-section" => area,
            "R at 20 °C" => Conductor.OhmsPerMetre(area, 20) * 1000,
            "R at 40 °C" => Conductor.OhmsPerMetre(area, 40) * 1000,
            "R at 60 °C" => Conductor.OhmsPerMetre(area, 60) * 1000,
            "R at 20 °C, 100 m" => Conductor.OhmsPerMetre(area, 20) * 100,
            "wire table" or "in ohms per 1000 ft" => Conductor.OhmsPerMetre(area, 20) * MetresPerThousandFeet,
            "gauge from the printed cross-section" => Conductor.Awg(PrintedArea(printed.Id)),
            _ => PrintedTables.Nothing(printed),
        };
    }

    private static double PrintedArea(string id) =>
        Csv.Read("conductor").Select(Printed.From).Single(row => row.Id == id && row.What == "cross-section").Number;
}

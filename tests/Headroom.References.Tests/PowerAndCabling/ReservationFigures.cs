using static System.Globalization.CultureInfo;
using Headroom.Engineering.Power;

namespace Headroom.References.Tests.PowerAndCabling;

internal static class ReservationFigures
{
    private static readonly Dictionary<string, (double Watts, double Volts, double Ohms)> Inputs = Csv.Read("802.3-reservation-inputs")
        .ToDictionary(row => row[0], row => (double.Parse(row[1], InvariantCulture), double.Parse(row[2], InvariantCulture), double.Parse(row[3], InvariantCulture)));

    internal static Figure Work(Printed printed)
    {
        var (watts, volts, ohms) = Inputs[printed.Id];
        var reserved = Reservation.SourceWatts(watts, volts, ohms);
        return printed.What switch
        {
            "device voltage" => ConstantPowerLoad.Solve(volts, ohms, watts)?.LoadVolts,
            "current" => ConstantPowerLoad.Solve(volts, ohms, watts)?.Amperes,
            "reserved at the source" => reserved,
            "above the class power before the clamp" => reserved - PoeClasses.SourceWatts(printed.Id == "R-6" ? 5 : 8),
            "reserved for class 5" => Reservation.ForClass(watts, 5, PoeType.Type3),
            "reserved for class 8" => Reservation.ForClass(watts, 8, PoeType.Type4),
            _ => PrintedTables.Nothing(printed),
        };
    }
}

using Headroom.Engineering.Standby;
using Headroom.References.Tests.PowerAndCabling;

namespace Headroom.References.Tests.Standby;

internal static class TemperatureFigures
{
    internal static Figure Work(Printed printed)
    {
        var n = PrintedNumbers.In(printed.What);
        return printed.Id switch
        {
            "1.2/life" when printed.Unit == "years" => n[0] * BatteryDerating.FloatLife(n[1], n[2]),
            "1.2/life" => BatteryDerating.FloatLife(n[0], n[1]),
            "1.2/fit" => 100 * Enumerable.Range(25, 96).Max(fahrenheit => Math.Abs(At(fahrenheit)!.Value * Fit((fahrenheit - 32) / 1.8) - 1)),
            "1.2/between" => BatteryDerating.LeadTemperature(n[0], creditHeat: true),
            "1.2/no-credit" => BatteryDerating.LeadTemperature(n[0]),
            _ => At(n[0]),
        };
    }

    private static double? At(double fahrenheit) => BatteryDerating.LeadTemperature((fahrenheit - 32) / 1.8, creditHeat: true);

    // The inverse of the factor as it was found; its T is in °C, as in °F it would be 50 % off.
    private static double Fit(double celsius) => 0.711009126 + 0.0138667895 * celsius - 0.0000933332591 * celsius * celsius;
}

using Headroom.Engineering.Heat;

namespace Headroom.References.Tests.Sound;

/// <summary>Limits of temperature, fanless boxes, life.</summary>
internal static class LimitFigures
{
    internal static Figure Work(Printed printed, string given, string asked)
    {
        var n = Told.Numbers(given);
        return printed.Id[..2] switch
        {
            "LM" => Class(printed, given, asked),
            "DE" => ThermalClass.At(Named(given).Most, n[^1], Named(given).MetresPerKelvin),
            "TT" => TouchLimits.Most(n[^1], given.Split(' ')[0]),
            "FL" => Fanless(n, given, asked),
            _ => Lives(printed, given, n),
        };
    }

    private static ThermalClass Named(string given) => ThermalClass.All.Single(one => given.Contains($"class {one.Name}", StringComparison.Ordinal));

    private static double Class(Printed printed, string given, string asked) => printed.Id switch
    {
        "LM-1" => asked == "least" ? ThermalClass.Recommended.Least : ThermalClass.Recommended.Most,
        "LM-2" => printed.What == "highest place" ? ThermalClass.Highest : asked == "least" ? Named(given).Least : Named(given).Most,
        _ => Named(given).MetresPerKelvin,
    };

    private static double Fanless(double[] n, string given, string asked)
    {
        var sides = 2 * n[2] * (n[0] + n[1]);
        var area = given.EndsWith("covered", StringComparison.Ordinal) ? sides : sides + n[0] * n[1];
        return asked == "area" ? area : ClosedBox.CaseRise(n[3], area);
    }

    private static double Lives(Printed printed, string given, double[] n) => printed.Id switch
    {
        "LF-1" => Life.At(n[0], n[1], n[2], Life.Capacitor),
        "LF-2" => Life.At(1, n[0], n[1], Life.Capacitor),
        "LF-3" => Life.MostCapacitorHours,
        "FN-5" => Life.FanHours,
        "FN-6" => Life.MeanOverTenth(n[0]),
        "FN-7" => Life.Arrhenius(n[0], n[2], n[1]),
        _ => Life.At(n[0], n[1], n[4], (n[2], n[3])),
    };
}

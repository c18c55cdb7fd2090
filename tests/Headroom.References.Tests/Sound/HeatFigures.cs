using Headroom.Engineering.Heat;
using Headroom.Engineering.Power;

namespace Headroom.References.Tests.Sound;

/// <summary>Heat in air, cupboards, vents, limits, life.</summary>
internal static class HeatFigures
{
    private const double Litre = 0.001;
    private const double Cfm = 1.69901082 / 3600;

    internal static Figure Work(Printed printed)
    {
        var (given, asked) = Told.Split(printed.What);
        var n = Told.Numbers(given);
        return printed.Id.Split('-')[0] switch
        {
            "SH" => Sensible(given, asked, n),
            "TR" => Air.Rise(n[0], n[1] * Litre),
            "HT" => Switch(n, asked),
            "AIR" => Standard(n[0], asked),
            "RC" => n[2] + Air.Returned(n[0], n[1]) + (asked == "outlet" ? n[1] : 0),
            "UW" => Wall(given, n),
            "EA" => ClosedBox.EffectiveArea((BoxPosition)((int)n[0] - 1), n[1], n[2], n[3]),
            "CB" => Cupboard(given, n),
            "ST" => Vented(n, asked),
            "SN" or "XF" => Needed(n, asked),
            "TC" => Time(n, asked),
            _ => LimitFigures.Work(printed, given, asked),
        };
    }

    private static Figure Sensible(string given, string asked, double[] n) => asked switch
    {
        "watts" => 1 / Air.Rise(1, given.Contains("cfm", StringComparison.Ordinal) ? Cfm : Litre),
        "flow in m3/h" => 3600 * Air.FlowFor(1, 1),
        "flow in cfm" => Air.FlowFor(1, given.Contains('F', StringComparison.Ordinal) ? 5.0 / 9 : 1) / Cfm,
        _ => given.EndsWith("BTU", StringComparison.Ordinal) ? SupplyLosses.BtuPerHour(n[0]) : n[0] / SupplyLosses.BtuPerHour(1),
    };

    private static double Switch(double[] n, string asked) => asked switch
    {
        "mains" => SupplyLosses.MainsWatts(n[0], n[1], n[2]),
        "stays" => SupplyLosses.HeatLeftWatts(n[0], n[1], n[2]),
        "stays in BTU" => SupplyLosses.BtuPerHour(SupplyLosses.HeatLeftWatts(n[0], n[1], n[2])),
        _ => SupplyLosses.BtuPerHour(SupplyLosses.MainsWatts(n[0], n[1], n[2])),
    };

    private static double Standard(double metres, string asked) => asked switch
    {
        "temperature" => Air.StandardKelvins(metres),
        "pressure" => Air.Pressure(metres) / 100,
        "density" => Air.Density(Air.StandardKelvins(metres) - Air.Zero, metres),
        "density at 25 °C" => Air.Density(25, metres),
        _ => Air.Density(25) / Air.Density(25, metres),
    };

    private static double Wall(string given, double[] n) => given switch
    {
        "sheet steel" => ClosedBox.SheetSteel,
        "plasterboard on both sides" => ClosedBox.Coefficient(2 * 0.0125 / 0.25 + 0.18),
        _ => ClosedBox.Coefficient(n[0] / 1000 / n[1]),
    };

    private static double Cupboard(string given, double[] n)
    {
        if (given.StartsWith("twice", StringComparison.Ordinal))
            return ClosedBox.RiseRatio(2, given.EndsWith("closed", StringComparison.Ordinal) ? ClosedBox.ClosedExponent : ClosedBox.VentedExponent);
        if (given.StartsWith("wood", StringComparison.Ordinal))
            return ClosedBox.Rise(n[1], n[0] * ClosedBox.Coefficient(0.018 / 0.13));
        return ClosedBox.Rise(n[1], ClosedBox.SheetSteel * ClosedBox.EffectiveArea((BoxPosition)((int)n[0] - 1), 0.6, 0.45, 0.37));
    }

    private static double Vented(double[] n, string asked)
    {
        var area = Vents.Together(n[1], n[1]);
        var rise = Vents.Rise(n[0], (area, n[2]), n[3], 25)!.Value;
        return asked == "rise" ? rise : Vents.Flow(area, n[2], rise, 25) / Litre;
    }

    private static double Needed(double[] n, string asked) => asked switch
    {
        "each opening" => 1e4 * Vents.AreaFor(n[0], n[1], n[2], 25),
        "flow in m3/h" => 3600 * Air.FlowFor(n[0], n[1]),
        "flow in cfm" => Air.FlowFor(n[0], n[1]) / Cfm,
        _ => Air.FlowFor(n[0], n[1]) / Litre,
    };

    private static double Time(double[] n, string asked)
    {
        var constant = Settling.Seconds(n[0], n[1]);
        return asked switch
        {
            "time constant" => constant / 60,
            "nine tenths after" => Settling.Until(0.9, constant) / 60,
            "reached after 60 min" => 100 * Settling.Reached(3600, constant),
            "final rise" => ClosedBox.Rise(n[2], n[1]),
            _ => ClosedBox.Rise(n[2], n[1]) * Settling.Reached(1800, constant),
        };
    }
}

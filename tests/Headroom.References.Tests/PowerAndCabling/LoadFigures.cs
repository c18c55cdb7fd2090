using Headroom.Engineering.Cabling;
using Headroom.Engineering.Power;

namespace Headroom.References.Tests.PowerAndCabling;

internal static class LoadFigures
{
    internal static Figure Work(Printed printed) =>
        printed.Id.StartsWith('L') ? Solved(LoadCase.All[printed.Id], printed) : Limits(printed);

    private static Figure Solved(LoadCase load, Printed printed) => printed.What switch
    {
        "loop" => load.LoopOhms,
        "most power, V²/4R" => ConstantPowerLoad.MostWatts(load.SourceVolts, load.LoopOhms),
        "device voltage" => load.Solved?.LoadVolts,
        "current" => load.Solved?.Amperes,
        "loss" => load.Solved?.LostWatts,
        "source power" => load.Solved?.SourceWatts,
        _ => PrintedTables.Nothing(printed),
    };

    private static Figure Limits(Printed printed) => printed.What switch
    {
        "V 50, R 12.5, P 50.0: device voltage" => Solve(50.0)?.LoadVolts,
        "V 50, R 12.5, P 50.0: current" => Solve(50.0)?.Amperes,
        "V 50, R 12.5, P 50.0: loss, share of source power" => 100 * Solve(50.0)?.LostWatts / Solve(50.0)?.SourceWatts,
        "V 50, R 12.5, P 50.01" => Solve(50.01)?.LoadVolts,
        "P 0: device voltage, V 50" => Solve(0)?.LoadVolts,
        "P 0: current" => Solve(0)?.Amperes,
        "longest loop, V 44, Vmin 37, P 12.95" => ConstantPowerLoad.MostOhmsKeeping(44, 37, 12.95),
        "longest loop, V 50, Vmin 42.5, P 25.5" => ConstantPowerLoad.MostOhmsKeeping(50, 42.5, 25.5),
        "longest loop, V 52, Vmin 41.1, P 71.3" => ConstantPowerLoad.MostOhmsKeeping(52, 41.1, 71.3),
        "longest loop, V 24, Vmin 18, P 8.5" => ConstantPowerLoad.MostOhmsKeeping(24, 18, 8.5),
        "the same in 24 AWG on 2 pairs at 20 °C" => ConstantPowerLoad.MostOhmsKeeping(24, 18, 8.5) / LoopOhmsOfOneMetre(24),
        "24 loads of 5.5 W on the cable of LC-20, at the switch" => 24 * LoadCase.All["LC-20"].Solved?.SourceWatts,
        _ => PrintedTables.Nothing(printed),
    };

    private static OperatingPoint? Solve(double watts) => ConstantPowerLoad.Solve(sourceVolts: 50, loopOhms: 12.5, watts);

    private static double LoopOhmsOfOneMetre(double awg) =>
        PairLoop.PowerLoopOhms(Conductor.OhmsPerMetre(Conductor.AreaSquareMillimetres(awg), 20), 1, 2);
}

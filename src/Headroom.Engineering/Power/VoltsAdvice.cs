using Headroom.Domain.Jobs;
using Headroom.Domain.Quantities;
using Headroom.Engineering.Binding;
using Headroom.Engineering.Cabling;

namespace Headroom.Engineering.Power;

/// <summary>What would bring enough volts to a device; each piece of advice is worked out, not guessed.</summary>
internal static class VoltsAdvice
{
    private static readonly double[] Gauges = [23, 22];

    /// <summary>The advice for a run that leaves too little.</summary>
    public static List<string> Of(PoweredPort port, Reserve reserve)
    {
        var advice = new List<string>();
        var wanted = VoltsStory.Wanted(port.LeastVolts!.Value, reserve);
        var run = port.Endpoint.PowerRun!;
        if (port.Pairs == 2 && port.Feed.Passive is not null && VoltsWith(port, run, Same, pairs: 4) is { } four && four >= wanted)
            advice.Add($"feed it on four pairs, if injector and device can: {Words.Of(four)} V would reach it");
        foreach (var gauge in Gauges)
        {
            if (VoltsWith(port, run, piece => Thicker(piece, gauge), port.Pairs) is { } volts && volts >= wanted)
            {
                advice.Add($"pull {Words.Of(gauge)} AWG instead: {Words.Of(volts)} V would reach it");
                break;
            }
        }

        if (run.Longest is { Metres: > 0 } longest && VoltsStory.LongestMetres(port, longest, wanted) is { } metres && metres > 0)
            advice.Add($"feed it from nearer: {longest.Name} holds up to {Words.Of(metres)} m");
        return advice;
    }

    private static double? VoltsWith(PoweredPort port, BoundRun run, Func<BoundPiece, double?> ohms, int pairs)
    {
        var conductor = 0.0;
        foreach (var piece in run.Pieces)
            conductor += ohms(piece) ?? double.NaN;
        var watts = port.In(port.Worst).DeviceWatts;
        return double.IsNaN(conductor) || watts is null ? null
            : ConstantPowerLoad.Solve(port.SourceVolts!.Value, PairLoop.PowerLoopOhms(conductor, metres: 1, pairs), watts.Value)?.LoadVolts;
    }

    private static double? Same(BoundPiece piece) => piece.Ohms;

    private static double? Thicker(BoundPiece piece, double gauge)
    {
        var area = new GaugeUnit().ToBase(gauge);
        return piece.Cord || piece is { CopperClad: false, SquareMillimetres: { } own } && own >= area
            ? piece.Ohms
            : piece.Metres * Conductor.OhmsPerMetre(area, piece.Celsius);
    }
}

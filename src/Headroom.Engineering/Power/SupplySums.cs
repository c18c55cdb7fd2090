using Headroom.Domain.Catalogues;
using Headroom.Engineering.Binding;

namespace Headroom.Engineering.Power;

/// <summary>Works out what a switch's supply takes and leaves.</summary>
internal static class SupplySums
{
    /// <summary>The figures of one switch.</summary>
    public static SupplyFigures Of(BoundSwitch s, IReadOnlyList<PoweredPort> ports)
    {
        var path = s.Model.PathEfficiency?.Value.Value ?? 1;
        var typical = Sum(ports, PowerState.Typical);
        double? worst = null;
        foreach (var state in DeviceDraws.States)
            worst = Larger(worst, Sum(ports, state));
        var baseWatts = s.Model.BaseWatts?.Value.Value;
        return new SupplyFigures(
            baseWatts, typical, worst, path,
            Point(s.Supply, (baseWatts, typical, path)),
            Point(s.Supply, (baseWatts, worst, path)),
            Missing(s, typical));
    }

    /// <summary>The supply of a switch when its ports give so much; null when something is not known.</summary>
    public static SupplyPoint? At(BoundSwitch s, double? portWatts) =>
        Point(s.Supply, (s.Model.BaseWatts?.Value.Value, portWatts, s.Model.PathEfficiency?.Value.Value ?? 1));

    private static SupplyPoint? Point(SupplyModel? supply, (double? Base, double? Ports, double Path) watts)
    {
        if (supply is null || watts.Base is not { } own || watts.Ports is not { } ports || supply.Efficiency.Count == 0)
            return null;
        var output = own + ports / watts.Path;
        var share = output / supply.Rated?.Value.Value;
        // Without a rated output the share is not known; the worst efficiency declared is on the safe side.
        var efficiency = share is { } load
            ? SupplyLosses.EfficiencyAt(load, [.. supply.Efficiency.Select(p => (p.Load.Value.Value, p.Efficiency.Value.Value))])!.Value
            : supply.Efficiency.Min(p => p.Efficiency.Value.Value);
        var mains = SupplyLosses.MainsWatts(own, ports, efficiency, watts.Path);
        return new SupplyPoint(output, share, efficiency, mains, mains - ports);
    }

    private static double? Sum(IReadOnlyList<PoweredPort> ports, PowerState state)
    {
        var sum = 0.0;
        foreach (var port in ports)
        {
            if (port.Fault is not PortFault.None)
                continue;
            if (port.In(state).PortWatts is not { } watts)
                return null;
            sum += watts;
        }

        return sum;
    }

    private static double? Larger(double? left, double? right) => left is null ? right : right is null ? left : Math.Max(left.Value, right.Value);

    private static string? Missing(BoundSwitch s, double? typical) =>
        s.Supply is null ? $"which supply has {s.Model.Id}? it is not in the catalogue"
        : s.Model.BaseWatts is null ? $"what does {s.Model.Id} draw by itself? read it at the socket with nothing plugged in"
        : s.Supply.Efficiency.Count == 0 ? $"how efficient is the supply of {s.Model.Id}? read the watts at the socket under load"
        : typical is null ? "a draw of a device is missing: see its entry"
        : null;
}

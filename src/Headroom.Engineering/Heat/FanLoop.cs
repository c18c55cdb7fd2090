using Headroom.Domain.Catalogues;

namespace Headroom.Engineering.Heat;

/// <summary>The one loop of heat and air: the inlet drives the fan level, the level the flow, the flow what comes back to the inlet.</summary>
/// <remarks>
/// It begins at the lowest level and goes on until a level drives itself. Each level is tried at most once: one that comes up again means
/// the fans go up and down for good; then the hottest inlet and the highest level of that round count, and it says so.
/// </remarks>
internal static class FanLoop
{
    private const double CubicMetresPerHour = 3600;

    /// <summary>Settles a unit.</summary>
    /// <param name="unit">The unit.</param>
    /// <param name="celsius">The air it stands in [°C].</param>
    /// <param name="watts">What it leaves in its air, and what its ports give [W]; null when not known.</param>
    /// <param name="with">Share of its own air that comes back, and the height above the sea [m].</param>
    public static (double Inlet, FanState Fan) Settle(HeatUnit unit, double celsius, (double? Heat, double? Ports) watts, (double Share, double Altitude) with)
    {
        if (unit.Sound is not { Levels: { Count: > 0 } levels })
            return (celsius, new FanState(0, null, null, 0, true));
        var density = Air.Density(celsius, with.Altitude);
        if (unit.Level is { } stated && stated <= levels.Count)
            return At(unit, levels[stated - 1], celsius, (watts.Heat, density, with.Share));
        var (level, tried) = (1, 0u);
        while (true)
        {
            var here = At(unit, levels[level - 1], celsius, (watts.Heat, density, with.Share));
            var next = FanDrive.Of(levels, here.Inlet, watts.Ports).High;
            if (next == level)
                return here;
            tried |= 1u << level;
            if ((tried & (1u << next)) != 0)
                return Unsettled(unit, levels, (Math.Min(level, next), Math.Max(level, next)), (celsius, watts.Heat, density, with.Share));
            level = next;
        }
    }

    // The hotter inlet belongs to the lower level, which moves less air.
    private static (double Inlet, FanState Fan) Unsettled(HeatUnit unit, IReadOnlyList<FanLevel> levels, (int Low, int High) between, (double Celsius, double? Heat, double Density, double Share) with)
    {
        var low = At(unit, levels[between.Low - 1], with.Celsius, (with.Heat, with.Density, with.Share));
        return (low.Inlet, low.Fan with { Level = between.High, Settles = false });
    }

    private static (double Inlet, FanState Fan) At(HeatUnit unit, FanLevel level, double celsius, (double? Heat, double Density, double Share) with)
    {
        var flow = level.Flow is { } given ? given.Value.Value / CubicMetresPerHour * (unit.Change?.FlowShare ?? 1) : (double?)null;
        if (flow is not > 0 || with.Heat is not { } heat)
            return (celsius, new FanState(level.Level, flow, null, 0, true));
        var rise = Air.Rise(heat, flow.Value, with.Density);
        var returned = Air.Returned(with.Share, rise);
        return (celsius + returned, new FanState(level.Level, flow, rise, returned, true));
    }
}

using Headroom.Domain.Jobs;

namespace Headroom.Engineering.Power;

/// <summary>What a switch sets aside for one port.</summary>
public static class PortReserve
{
    /// <summary>Margin on top of the measured maximum [W]: the standard gives it by class (145.2.8.2), not at hand; 1.75 W covers the table from memory.</summary>
    internal const double AutoclassMarginWatts = 1.75;

    /// <summary>What is set aside for a port that runs.</summary>
    /// <param name="port">The port.</param>
    /// <param name="setting">The setting.</param>
    /// <param name="state">The state, which matters to measured watts only.</param>
    /// <returns>The watts [W]; null when they hang on something nobody knows.</returns>
    public static double? Running(PoweredPort port, WholeSetting setting, PowerState state) => setting.ReservesBy switch
    {
        ReservesBy.Measured => Capped(port, port.In(state).PortWatts),
        ReservesBy.PortLimit => Limit(port),
        ReservesBy.Negotiated => Capped(port, Negotiated(port, setting.Counts)),
        ReservesBy.Autoclass => Capped(port, Auto(port)),
        _ => Capped(port, ByClass(port)),
    };

    /// <summary>What is set aside for a port that comes up.</summary>
    /// <param name="port">The port.</param>
    /// <param name="setting">The setting.</param>
    /// <returns>The watts [W]; null when they hang on something nobody knows.</returns>
    public static double? Starting(PoweredPort port, WholeSetting setting) => setting.AtStart switch
    {
        AtStart.Draw => Capped(port, port.In(PowerState.Start).PortWatts),
        AtStart.PortLimit => Limit(port),
        _ => Capped(port, ByClass(port)),
    };

    // A passive port has no class: its rated output is set aside, else what its device draws at most.
    private static double? ByClass(PoweredPort port) =>
        port.Feed.Passive is null ? port.ClassWatts : port.GrantWatts ?? port.In(PowerState.Peak).PortWatts;

    private static double? Limit(PoweredPort port) =>
        port.Feed.LimitWatts ?? (port.Feed.Type is { } type ? PoeTypes.Of(type).MostSourceWatts : ByClass(port));


    private static double? Negotiated(PoweredPort port, NegotiatedCounts counts)
    {
        if (port.Endpoint.Model.Power?.Asks is not { } asks || port.GrantedClass is not { } granted || port.Feed.Type is not { } type)
            return ByClass(port);
        var watts = Math.Min(asks.Value.Value, PoeClasses.DeviceWatts(granted));
        return counts == NegotiatedCounts.Device ? watts : Reservation.ForClass(watts, granted, type);
    }

    private static double? Auto(PoweredPort port) =>
        port.Endpoint.Model.Power?.Autoclass == true && port.Feed.Type >= PoeType.Type3 && port.GrantedClass is { } granted
            ? port.In(PowerState.Peak).PortWatts is { } peak ? Autoclass.ReserveWatts(peak, AutoclassMarginWatts, granted, port.Feed.Type!.Value) : null
            : ByClass(port);

    // No port gives more than it grants: its class, the limit set for it, the rating of its passive output.
    private static double? Capped(PoweredPort port, double? watts) =>
        watts is { } found && port.GrantWatts is { } most ? Math.Min(found, most) : watts;
}

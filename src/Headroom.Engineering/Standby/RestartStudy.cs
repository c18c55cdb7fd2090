using Headroom.Engineering.Binding;
using Headroom.Engineering.Power;

namespace Headroom.Engineering.Standby;

/// <summary>Plays through the minutes after the mains comes back: switches start, detect, classify, set aside, refuse, try again.</summary>
/// <remarks>
/// Deterministic: the longest times of the standard are taken, and ports come up one after the other. Refused ports are tried again
/// when everyone who is up has settled, so that who stays dark agrees with what power counts for the restart.
/// </remarks>
public static class RestartStudy
{
    /// <summary>Plays through a design.</summary>
    /// <param name="bound">The bound design.</param>
    /// <param name="power">What power worked out for it.</param>
    /// <returns>Who has power when, and who stays dark.</returns>
    public static RestartResult Of(BoundDesign bound, PowerResult power)
    {
        var units = new List<UnitRestart>(power.Switches.Count + power.Injectors.Count);
        foreach (var s in power.Switches)
            units.Add(Switch(s));
        foreach (var injector in power.Injectors)
            units.Add(Injector(injector));
        return new RestartResult(units, OutsideLines.BootSeconds(bound));
    }

    private static UnitRestart Switch(SwitchPower s)
    {
        var boot = s.Switch.Model.Boot?.Value.Value;
        var run = new RestartRun(s, (boot ?? 0, boot is not null));
        run.ToTheEnd();
        return new UnitRestart(s.Switch.Id, s, boot, run.Ports, run.Waves, RestartPeaks.Of(run.Ports));
    }

    // An injector does not start: it asks, if it is one that asks, and gives.
    private static UnitRestart Injector(InjectorPower injector)
    {
        var ports = new List<RestartPort>(injector.Asking.Count);
        foreach (var port in injector.Asking)
            ports.Add(RestartRun.Up(port, 1, (port.Feed.Passive is null ? StartUp.DetectionSeconds + StartUp.PowerOnSeconds : 0, true)));
        return new UnitRestart(injector.Injector.Id, null, 0, ports, ports.Count > 0 ? 1 : 0, RestartPeaks.Of(ports));
    }
}

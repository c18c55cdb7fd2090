using Headroom.Domain.Jobs;
using Headroom.Engineering.Binding;
using Headroom.Engineering.Power;

namespace Headroom.Engineering.Standby;

/// <summary>Adds up what hangs on a standby supply, by state and by stage; switches with the losses of their own supplies.</summary>
internal sealed class FedUnits
{
    // States that last: an outage by day, at night, in frost.
    private static readonly PowerState[] Lasting = [PowerState.Typical, PowerState.Night, PowerState.Frost];

    private readonly List<SwitchPower> _switches = [];
    private readonly List<InjectorPower> _injectors = [];
    private readonly IReadOnlyList<AlsoFed> _also;

    /// <summary>Finds what hangs on a supply.</summary>
    public FedUnits(PowerResult power, PlacedStandby supply)
    {
        foreach (var s in power.Switches)
        {
            if (s.Switch.Placed.FedBy == supply.Id)
                _switches.Add(s);
        }

        foreach (var injector in power.Injectors)
        {
            if (injector.Injector.Placed.FedBy == supply.Id)
                _injectors.Add(injector);
        }

        _also = supply.Also ?? [];
    }

    /// <summary>How many things hang on it.</summary>
    public int Count => _switches.Count + _injectors.Count + _also.Count;

    /// <summary>Its switches.</summary>
    public IReadOnlyList<SwitchPower> Switches => _switches;

    /// <summary>Each thing with what it takes at its most.</summary>
    public List<FedUnit> All()
    {
        var all = new List<FedUnit>(Count);
        foreach (var s in _switches)
        {
            var factor = s.Switch.Supply?.PowerFactor?.Value.Value;
            all.Add(new(s.Switch.Id, s.Supply.Worst?.MainsWatts, factor ?? FedUnit.UsualPowerFactor, factor is null, "this study, power", s.Supply.Worst is null ? s.Supply.Question ?? "a draw of a device is missing: see its entry" : null));
        }

        foreach (var injector in _injectors)
        {
            var most = Watts(injector, injector.Known == injector.Asking.Count ? injector.DemandWatts : null);
            var factor = injector.Injector.Model.Supply.PowerFactor?.Value.Value;
            all.Add(new(injector.Injector.Id, most, factor ?? FedUnit.UsualPowerFactor, factor is null, "this study, power", most is null ? Question(injector) : null));
        }

        foreach (var also in _also)
            all.Add(new(also.Name, also.Watts.Value.Value, FedUnit.UsualPowerFactor, true, Origins.Of(also.Watts), null));
        return all;
    }

    /// <summary>The state of those that last in which most is taken, and what is taken then; null when something is not known.</summary>
    public (PowerState State, double Watts)? Heaviest()
    {
        (PowerState State, double Watts)? heaviest = null;
        foreach (var state in Lasting)
        {
            if (WattsIn(state, _ => true) is not { } watts)
                return null;
            if (heaviest is null || watts > heaviest.Value.Watts)
                heaviest = (state, watts);
        }

        return heaviest;
    }

    /// <summary>What is taken in a state while only some ports are on [W]; null when something is not known.</summary>
    public double? WattsIn(PowerState state, Func<Priority, bool> on)
    {
        var sum = 0.0;
        foreach (var s in _switches)
        {
            if (s.SupplyAt(PortWatts(s, state, on))?.MainsWatts is not { } watts)
                return null;
            sum += watts;
        }

        foreach (var injector in _injectors)
        {
            if (Watts(injector, PortWatts(injector.Asking, state)) is not { } watts)
                return null;
            sum += watts;
        }

        foreach (var also in _also)
            sum += also.Watts.Value.Value;
        return sum;
    }

    /// <summary>Says whether any port of a priority is on.</summary>
    public bool HasPorts(Priority priority)
    {
        foreach (var s in _switches)
        {
            foreach (var port in s.Counter.Served)
            {
                if (SwitchCounter.PriorityOf(s.Switch, port) == priority)
                    return true;
            }
        }

        return false;
    }

    private static double? PortWatts(SwitchPower s, PowerState state, Func<Priority, bool> on)
    {
        var sum = 0.0;
        foreach (var port in s.Counter.Served)
        {
            if (!on(SwitchCounter.PriorityOf(s.Switch, port)))
                continue;
            if (port.In(state).PortWatts is not { } watts)
                return null;
            sum += watts;
        }

        return sum;
    }

    private static double? PortWatts(IReadOnlyList<PoweredPort> ports, PowerState state)
    {
        var sum = 0.0;
        foreach (var port in ports)
        {
            if (port.In(state).PortWatts is not { } watts)
                return null;
            sum += watts;
        }

        return sum;
    }

    // The worst efficiency its supply declares: an injector's load is small, and its curve flat.
    private static double? Watts(InjectorPower injector, double? ports)
    {
        var points = injector.Injector.Model.Supply.Efficiency;
        if (ports is null || points.Count == 0)
            return null;
        var worst = 1.0;
        foreach (var point in points)
            worst = Math.Min(worst, point.Efficiency.Value.Value);
        return ports / worst;
    }

    private static string Question(InjectorPower injector) => injector.Injector.Model.Supply.Efficiency.Count == 0
        ? $"how efficient is {injector.Injector.Id}? read the watts at the socket under load"
        : "a draw of a device is missing: see its entry";
}

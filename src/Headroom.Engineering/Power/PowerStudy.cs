using Headroom.Engineering.Binding;
using Headroom.Engineering.MeasuredDraws;

namespace Headroom.Engineering.Power;

/// <summary>Applies the physics of power over the cable to a bound design.</summary>
public static class PowerStudy
{
    /// <summary>Works out a design.</summary>
    /// <param name="bound">The bound design.</param>
    /// <param name="measured">What was read of draws; null when nothing was.</param>
    /// <returns>The result; entries are made from it by <see cref="PowerLedger"/>.</returns>
    public static PowerResult Of(BoundDesign bound, MeasuredDrawResult? measured = null)
    {
        var powered = new List<BoundEndpoint>(bound.Endpoints.Count);
        var unserved = new List<BoundEndpoint>();
        var live = new List<LivePin>();
        foreach (var endpoint in bound.Endpoints)
        {
            if (endpoint.TakesPower && endpoint.Port is not null)
                powered.Add(endpoint);
            else if (endpoint.TakesPower)
                unserved.Add(endpoint);
            else if (endpoint.Port is { } patch && PortFeeds.Of(patch).Passive is { } passive)
                live.Add(new LivePin(patch, endpoint, passive.Volts.Value.Value));
        }

        foreach (var patch in bound.LooseDrops)
        {
            if (PortFeeds.Of(patch).Passive is { } passive)
                live.Add(new LivePin(patch, null, passive.Volts.Value.Value));
        }

        var ports = Shares.Map(powered, PortSolver.Solve);
        var byUnit = ByUnit(ports);
        return new PowerResult(
            bound, ports, unserved, live,
            Shares.Map(bound.Switches, ports.Length, s => Switch(s, byUnit.GetValueOrDefault(s.Id) ?? [], measured)),
            [.. bound.Injectors.Select(i => Injector(i, byUnit.GetValueOrDefault(i.Id) ?? []))]);
    }

    private static Dictionary<string, List<PoweredPort>> ByUnit(PoweredPort[] ports)
    {
        var byUnit = new Dictionary<string, List<PoweredPort>>();
        foreach (var port in ports)
        {
            if (!byUnit.TryGetValue(port.Port.Unit, out var own))
                byUnit[port.Port.Unit] = own = [];
            own.Add(port);
        }

        return byUnit;
    }

    private static SwitchPower Switch(BoundSwitch s, IReadOnlyList<PoweredPort> ports, MeasuredDrawResult? measured)
    {
        var budget = s.Supply?.PortWatts?.Value.Value;
        var counter = new SwitchCounter(s, ports.Where(Asks), budget, measured);
        var setting = WholeSetting.Of(s.Setting);
        var states = counter.Count(setting);
        return new SwitchPower(s, ports, counter, setting, budget, states, SwitchCounter.WorstOf(states), SupplySums.Of(s, ports));
    }

    private static InjectorPower Injector(BoundInjector injector, IReadOnlyList<PoweredPort> ports)
    {
        var output = injector.Model.Passive;
        var budget = injector.Model.Supply.PortWatts?.Value.Value ?? output?.Volts.Value.Value * output?.Amperes?.Value.Value * injector.Model.Ports;
        var worst = (State: PowerState.Typical, Watts: -1.0, Amperes: 0.0, Known: 0);
        foreach (var state in DeviceDraws.States)
        {
            var known = ports.Where(port => Asks(port) && port.In(state).PortWatts is not null).ToList();
            var watts = known.Sum(port => port.In(state).PortWatts!.Value);
            if (watts > worst.Watts)
                worst = (state, watts, known.Sum(port => port.In(state).PortWatts!.Value / port.SourceVolts!.Value), known.Count);
        }

        return new InjectorPower(injector, ports, budget, worst.State, worst.Watts, worst.Amperes, worst.Known);
    }

    // A device that the port never feeds asks for nothing; one that gets too many volts does draw.
    private static bool Asks(PoweredPort port) => port.Fault is PortFault.None or PortFault.TooManyVolts;
}

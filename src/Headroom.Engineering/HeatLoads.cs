using Headroom.Engineering.Heat;
using Headroom.Engineering.Power;

namespace Headroom.Engineering;

/// <summary>Hands what the study of power found on to the study of heat: what each unit leaves where it stands, and what devices take in each space.</summary>
internal sealed class HeatLoads(PowerResult power)
{
    // What a standby supply loses of what it passes on from the mains: assumed, no figure in a catalogue (common practice, no source).
    private const double StandbyLoss = 0.05;

    private Dictionary<string, HeatLoad>? _byUnit;
    private Dictionary<string, HeatLoad>? _bySpace;

    /// <summary>What a unit leaves in its space.</summary>
    public HeatLoad Of(string unit) => (_byUnit ??= Gather()).GetValueOrDefault(unit) ?? HeatLoad.Nothing;

    /// <summary>What devices fed over cables leave in a space.</summary>
    public HeatLoad In(string space) => (_bySpace ??= Devices()).GetValueOrDefault(space) ?? HeatLoad.Nothing;

    private Dictionary<string, HeatLoad> Gather()
    {
        var loads = new Dictionary<string, HeatLoad>();
        var fed = new Dictionary<string, HeatLoad>();
        foreach (var s in power.Switches)
        {
            var (typical, worst) = (s.Supply.Typical, s.Supply.Worst);
            loads[s.Switch.Id] = new HeatLoad(typical?.HeatWatts, worst?.HeatWatts, "power: all it takes less what leaves on the cables")
            {
                Question = typical is null || worst is null ? s.Supply.Question ?? "a draw of a device is missing: see its entry" : null,
                Ports = (s.Supply.TypicalPortWatts, s.Supply.WorstPortWatts),
            };
            Feed(fed, s.Switch.Placed.FedBy, (typical?.MainsWatts, worst?.MainsWatts));
        }

        foreach (var injector in power.Injectors)
        {
            var (ordinary, most) = (Ordinary(injector), injector.Known == injector.Ports.Count ? injector.DemandWatts : (double?)null);
            var mains = (Mains(injector, ordinary), Mains(injector, most));
            loads[injector.Injector.Id] = new HeatLoad(mains.Item1 - ordinary, mains.Item2 - most, "power: what it takes less what leaves on the cable")
            {
                Question = mains.Item1 is null || mains.Item2 is null ? $"how efficient is {injector.Injector.Model.Id}, and what hangs on it?" : null,
            };
            Feed(fed, injector.Injector.Placed.FedBy, mains);
        }

        foreach (var unit in power.Bound.Design.Standby)
        {
            var through = fed.GetValueOrDefault(unit.Id) ?? HeatLoad.Nothing;
            loads[unit.Id] = new HeatLoad(StandbyLoss * through.OrdinaryWatts, StandbyLoss * through.MostWatts, "5 % of what it passes on, assumed: common practice, no source")
            {
                Question = through.OrdinaryWatts is null || through.MostWatts is null ? $"what does {unit.Id} feed? a draw is missing: see the entries of power" : null,
            };
        }

        return loads;
    }

    private static void Feed(Dictionary<string, HeatLoad> fed, string? by, (double? Ordinary, double? Most) watts)
    {
        if (by is null)
            return;
        var before = fed.GetValueOrDefault(by) ?? HeatLoad.Nothing;
        fed[by] = before.And(new HeatLoad(watts.Ordinary, watts.Most, ""));
    }

    private static double? Ordinary(InjectorPower injector)
    {
        var sum = 0.0;
        foreach (var port in injector.Asking)
        {
            if (port.In(PowerState.Typical).PortWatts is not { } watts)
                return null;
            sum += watts;
        }

        return sum;
    }

    private static double? Mains(InjectorPower injector, double? watts)
    {
        var supply = injector.Injector.Model.Supply;
        if (watts is not { } given || supply.Efficiency.Count == 0)
            return null;
        if (given == 0)
            return 0;
        var points = new (double, double)[supply.Efficiency.Count];
        for (var i = 0; i < points.Length; i++)
            points[i] = (supply.Efficiency[i].Load.Value.Value, supply.Efficiency[i].Efficiency.Value.Value);
        var share = given / (supply.Rated?.Value.Value ?? supply.PortWatts?.Value.Value ?? given);
        return given / SupplyLosses.EfficiencyAt(share, points);
    }

    private Dictionary<string, HeatLoad> Devices()
    {
        var loads = new Dictionary<string, HeatLoad>();
        foreach (var port in power.Ports)
        {
            if (port.Endpoint.Run?.Drop.To is not { } space || port.Fault is not PortFault.None)
                continue;
            var before = loads.GetValueOrDefault(space) ?? HeatLoad.Nothing;
            loads[space] = before.And(new HeatLoad(port.In(PowerState.Typical).DeviceWatts, port.In(port.Worst).DeviceWatts, "draws of the devices there"));
        }

        return loads;
    }
}

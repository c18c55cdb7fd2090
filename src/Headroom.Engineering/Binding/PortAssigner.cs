using Headroom.Domain.Catalogues;
using Headroom.Domain.Jobs;
using Headroom.Engineering.Power;

namespace Headroom.Engineering.Binding;

/// <summary>Knows which port everything hangs on, and takes free ports for powered endpoints that nobody has patched yet.</summary>
internal sealed class PortAssigner
{
    private readonly IReadOnlyList<BoundSwitch> _switches;
    private readonly Dictionary<string, BoundPatch> _patched = [];
    private readonly Dictionary<string, SortedSet<int>> _free = [];
    private readonly HashSet<string> _used = [];

    /// <summary>Reads the patching of a design.</summary>
    public PortAssigner(IReadOnlyList<BoundSwitch> switches, IReadOnlyList<BoundInjector> injectors, Design design)
    {
        _switches = switches;
        var byId = switches.ToDictionary(s => s.Id);
        var injectorById = injectors.ToDictionary(i => i.Id);
        foreach (var s in switches)
            _free[s.Id] = new SortedSet<int>(s.Model.Ports.SelectMany(group => Enumerable.Range(group.First, group.Last - group.First + 1)));
        foreach (var patch in design.Patch)
        {
            var (unit, port) = (patch.To.Unit, patch.To.Port ?? 1);
            _patched[patch.What] = new BoundPatch(patch.What, byId.GetValueOrDefault(unit), injectorById.GetValueOrDefault(unit), port, Assumed: false);
            Take(new PortRef(unit, port));
        }

        foreach (var end in injectors.SelectMany(i => i.Placed.From).Concat((design.Uplinks ?? []).SelectMany(u => new[] { u.From, u.To })))
            Take(end);
    }

    /// <summary>The port an endpoint was patched to, by its drop or by itself; null when nobody has.</summary>
    public BoundPatch? Patched(Endpoint endpoint)
    {
        var key = endpoint.Drop is { } drop && _patched.ContainsKey(drop) ? drop : endpoint.Id;
        if (!_patched.TryGetValue(key, out var patch))
            return null;
        _used.Add(key);
        return patch;
    }

    /// <summary>The first free port that suits: nearest switch first, the least type that serves its class; null when none is free.</summary>
    public BoundPatch? Assume(BoundEndpoint endpoint)
    {
        var home = endpoint.Run?.Drop.From ?? endpoint.Endpoint.Near;
        (BoundSwitch Switch, int Port)? best = null;
        var least = int.MaxValue;
        foreach (var s in _switches.OrderBy(s => s.Space is not null && s.Space == home ? 0 : 1))
        {
            foreach (var group in s.Model.Ports)
            {
                if (Rank(s, group, endpoint.Model) is not { } rank || rank >= least || FirstFree(s, group) is not { } port)
                    continue;
                (best, least) = ((s, port), rank);
            }
        }

        if (best is not { } found)
            return null;
        _free[found.Switch.Id].Remove(found.Port);
        return new BoundPatch(endpoint.Id, found.Switch, null, found.Port, Assumed: true);
    }

    /// <summary>Patched drops on which no endpoint hangs.</summary>
    public List<BoundPatch> Loose(IReadOnlyList<BoundEndpoint> endpoints) =>
        endpoints.Count == 0 ? [.. _patched.Values] : [.. _patched.Where(pair => !_used.Contains(pair.Key)).Select(pair => pair.Value)];

    private void Take(PortRef port)
    {
        if (port.Port is { } number && _free.TryGetValue(port.Unit, out var free))
            free.Remove(number);
    }

    private int? FirstFree(BoundSwitch s, PortGroup group)
    {
        foreach (var port in _free[s.Id].GetViewBetween(group.First, group.Last))
        {
            if (group.Poe is not null || s.PassiveOn(port))
                return port;
        }

        return null;
    }

    // Lower suits better; null does not suit at all.
    private static int? Rank(BoundSwitch s, PortGroup group, EndpointModel model)
    {
        var power = model.Power!;
        if (power.Class is not { } cls)
            return power.Passive is not null && group.Passive is not null ? 0 : power.Passive is null && group.Poe is not null ? 50 : null;
        if (group.Poe is not { } type)
            return null;
        var highest = PoeTypes.Of(type).HighestClass;
        return highest >= (cls == 0 ? 3 : cls) ? highest : 100 - highest;
    }
}

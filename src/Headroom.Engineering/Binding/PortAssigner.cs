using Headroom.Domain.Catalogues;
using Headroom.Domain.Jobs;
using Headroom.Engineering.Power;

namespace Headroom.Engineering.Binding;

/// <summary>Knows which port everything hangs on, and takes free ports for powered endpoints that nobody has patched yet.</summary>
internal sealed class PortAssigner
{
    private readonly IReadOnlyList<BoundSwitch> _switches;
    private readonly Dictionary<string, BoundPatch> _patched;
    private readonly Dictionary<string, bool[]> _taken = [];

    /// <summary>Reads the patching of a design.</summary>
    public PortAssigner(IReadOnlyList<BoundSwitch> switches, IReadOnlyList<BoundInjector> injectors, Design design)
    {
        _switches = switches;
        _patched = new(design.Patch.Count);
        var byId = switches.ToDictionary(s => s.Id);
        var injectorById = injectors.ToDictionary(i => i.Id);
        foreach (var s in switches)
            _taken[s.Id] = new bool[LastPort(s) + 1];
        foreach (var patch in design.Patch)
        {
            var (unit, port) = (patch.To.Unit, patch.To.Port ?? 1);
            _patched[patch.What] = new BoundPatch(patch.What, byId.GetValueOrDefault(unit), injectorById.GetValueOrDefault(unit), port, Assumed: false);
            Take(unit, port);
        }

        foreach (var end in injectors.SelectMany(i => i.Placed.From).Concat((design.Uplinks ?? []).SelectMany(u => new[] { u.From, u.To })))
            Take(end.Unit, end.Port);
    }

    /// <summary>The port an endpoint was patched to, by its drop or by itself; null when nobody has.</summary>
    public BoundPatch? Patched(Endpoint endpoint)
    {
        BoundPatch? patch = null;
        return endpoint.Drop is { } drop && _patched.TryGetValue(drop, out patch) || _patched.TryGetValue(endpoint.Id, out patch) ? patch : null;
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
        _taken[found.Switch.Id][found.Port] = true;
        return new BoundPatch(endpoint.Id, found.Switch, null, found.Port, Assumed: true);
    }

    /// <summary>Patched drops on which no endpoint hangs.</summary>
    public List<BoundPatch> Loose(IReadOnlyList<BoundEndpoint> endpoints)
    {
        var patched = 0;
        for (var i = 0; i < endpoints.Count; i++)
            patched += endpoints[i].Port is { Assumed: false } ? 1 : 0;
        // No two hang on one patch, or the job would have been refused: where there are as many, none is loose.
        if (patched == _patched.Count)
            return [];
        var used = new HashSet<BoundPatch>(endpoints.Select(endpoint => endpoint.Port).OfType<BoundPatch>(), ReferenceEqualityComparer.Instance);
        return [.. _patched.Values.Where(patch => !used.Contains(patch))];
    }

    private static int LastPort(BoundSwitch s)
    {
        var last = 0;
        for (var i = 0; i < s.Model.Ports.Count; i++)
            last = Math.Max(last, s.Model.Ports[i].Last);
        return last;
    }

    private void Take(string unit, int? port)
    {
        if (port is { } number && _taken.TryGetValue(unit, out var taken) && number >= 0 && number < taken.Length)
            taken[number] = true;
    }

    private int? FirstFree(BoundSwitch s, PortGroup group)
    {
        var taken = _taken[s.Id];
        for (var port = group.First; port <= group.Last; port++)
        {
            if (!taken[port] && (group.Poe is not null || s.PassiveOn(port)))
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

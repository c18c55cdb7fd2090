using Headroom.Engineering.Binding;

namespace Headroom.Engineering.Standby;

/// <summary>Finds for everything that must go on working what it needs on its way to the line, and when it works again.</summary>
internal sealed class KeptServices
{
    private readonly BoundDesign _bound;
    private readonly RestartResult _restart;
    private readonly Dictionary<string, RestartPort> _ports = [];
    private readonly HashSet<string> _also = [];

    private KeptServices(BoundDesign bound, RestartResult restart)
    {
        (_bound, _restart) = (bound, restart);
        foreach (var unit in restart.Units)
        {
            foreach (var port in unit.Ports)
                _ports.TryAdd(port.Port.Id, port);
        }

        foreach (var supply in bound.Design.Standby)
        {
            foreach (var also in supply.Also ?? [])
                _also.Add(also.Name);
        }
    }

    /// <summary>One for each name of the policy that means something in the job.</summary>
    public static List<KeptService> Of(BoundDesign bound, RestartResult restart)
    {
        var keep = bound.Job.Policy.Outage.Keep;
        var kept = new List<KeptService>(keep.Count);
        if (keep.Count == 0)
            return kept;
        var services = new KeptServices(bound, restart);
        foreach (var name in keep)
        {
            if (services.Of(name) is { } service)
                kept.Add(service);
        }

        return kept;
    }

    private KeptService? Of(string name)
    {
        var way = new KeptWay(_bound, _also);
        var back = new KeptBack(_restart);
        var ids = new List<string>();
        foreach (var endpoint in _bound.Endpoints)
        {
            if (endpoint.Id != name && endpoint.Model.Kind != name)
                continue;
            ids.Add(endpoint.Id);
            var switches = way.Add(endpoint);
            back.Add(endpoint, _ports.GetValueOrDefault(endpoint.Id), switches);
        }

        foreach (var s in _bound.Switches)
        {
            if (s.Id != name)
                continue;
            ids.Add(s.Id);
            back.Add(s.Id, way.Add(s));
        }

        return ids.Count == 0 ? null : back.Told(new(name, ids, way.Needs, way.Missing, way.Shed) { Question = way.Question });
    }
}

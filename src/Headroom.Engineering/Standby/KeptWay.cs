using Headroom.Domain.Jobs;
using Headroom.Engineering.Binding;

namespace Headroom.Engineering.Standby;

/// <summary>Walks from endpoints to the line and notes what is on the way and on no battery.</summary>
internal sealed class KeptWay(BoundDesign bound, HashSet<string> also)
{
    private readonly HashSet<string> _seen = [];

    /// <summary>Everything on the way, each once.</summary>
    public List<string> Needs { get; } = [];

    /// <summary>What of it is on no battery.</summary>
    public List<string> Missing { get; } = [];

    /// <summary>What is switched off to spare the battery, with the minutes.</summary>
    public List<string> Shed { get; } = [];

    /// <summary>What is to be found out; null when nothing.</summary>
    public string? Question { get; private set; }

    /// <summary>Adds the way of an endpoint; returns the switches on it.</summary>
    public List<string> Add(BoundEndpoint endpoint)
    {
        if (!endpoint.TakesPower)
            Need(endpoint.Id, also.Contains(endpoint.Id));
        if (endpoint.Port is not { } patch)
        {
            Question ??= $"where is {endpoint.Id} patched? follow its cord";
            return [];
        }

        if (patch.Switch is { } direct)
        {
            NoteShed(endpoint, direct, patch.Port);
            return Add(direct);
        }

        Need(patch.Injector!.Id, patch.Injector.Placed.FedBy is not null);
        var from = patch.Injector.Placed.From;
        var data = from.Count == 0 ? null : from[Math.Min(from.Count, patch.Port) - 1];
        if (data is not null && SwitchOf(data.Unit) is { } behind)
            return Add(behind);
        Question ??= $"which switch port does the data of {patch.Injector.Id} come from? write its 'from'";
        return [];
    }

    /// <summary>Adds the way from a switch; returns the switches on it.</summary>
    public List<string> Add(BoundSwitch first)
    {
        var switches = new List<string>();
        for (BoundSwitch? s = first; s is not null && !switches.Contains(s.Id);)
        {
            switches.Add(s.Id);
            Need(s.Id, s.Placed.FedBy is not null);
            s = Next(s);
        }

        return switches;
    }

    /// <summary>Says whether something that must go on working hangs on a port of low priority.</summary>
    public static bool KeepsLow(BoundDesign bound)
    {
        var keep = bound.Job.Policy.Outage.Keep;
        foreach (var endpoint in bound.Endpoints)
        {
            if (endpoint.Port is { Switch: { } s } patch && (keep.Contains(endpoint.Id) || keep.Contains(endpoint.Model.Kind)) && PriorityOf(s, endpoint, patch.Port) == Priority.Low)
                return true;
        }

        return false;
    }

    private BoundSwitch? Next(BoundSwitch s)
    {
        foreach (var link in bound.Design.Uplinks ?? [])
        {
            if (link.From.Unit != s.Id)
                continue;
            if (SwitchOf(link.To.Unit) is { } next)
                return next;
            Line(link.To.Unit);
            return null;
        }

        Question ??= $"how does {s.Id} reach the line? write its uplink";
        return null;
    }

    private void Line(string name)
    {
        // A line of which no boxes are written is one box, called as the uplink calls it.
        var boxes = OutsideLines.Find(bound, name)?.Boxes ?? [];
        if (boxes.Count == 0)
            Need(name, also.Contains(name));
        foreach (var box in boxes)
            Need(box, also.Contains(box));
    }

    private BoundSwitch? SwitchOf(string id)
    {
        foreach (var s in bound.Switches)
        {
            if (s.Id == id)
                return s;
        }

        return null;
    }

    private void NoteShed(BoundEndpoint endpoint, BoundSwitch s, int port)
    {
        foreach (var supply in bound.Design.Standby)
        {
            if (supply.Id != s.Placed.FedBy)
                continue;
            var priority = PriorityOf(s, endpoint, port);
            foreach (var stage in supply.Sheds ?? [])
            {
                if (stage.Priority == priority)
                    Shed.Add($"{endpoint.Id} after {Words.Of(stage.After.Value.Value / 60)} min");
            }
        }
    }

    private static Priority PriorityOf(BoundSwitch s, BoundEndpoint endpoint, int port) =>
        s.Setting.Priorities.TryGetValue(port, out var byPort) ? byPort
        : s.Setting.EndpointPriorities.TryGetValue(endpoint.Id, out var byId) ? byId
        : endpoint.Endpoint.Drop is { } drop && s.Setting.EndpointPriorities.TryGetValue(drop, out var byDrop) ? byDrop
        : Priority.Low;

    private void Need(string what, bool onBattery)
    {
        if (!_seen.Add(what))
            return;
        Needs.Add(what);
        if (!onBattery)
            Missing.Add(what);
    }
}

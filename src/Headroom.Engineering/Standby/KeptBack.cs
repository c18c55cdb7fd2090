using Headroom.Engineering.Binding;

namespace Headroom.Engineering.Standby;

/// <summary>When what must go on working works again: its own start, the switches on its way, and the line, whichever is last.</summary>
internal sealed class KeptBack(RestartResult restart)
{
    private readonly List<string> _dark = [];
    private (double Seconds, string? Id) _last = (-1, null);
    private string? _question = restart.LineSeconds is null ? "how long do the boxes at the line take to start? pull their plug once and look at the clock" : null;

    /// <summary>Adds an endpoint.</summary>
    public void Add(BoundEndpoint endpoint, RestartPort? port, List<string> switches)
    {
        if (endpoint.TakesPower && port is null or { Dark: true })
        {
            _dark.Add(endpoint.Id);
            return;
        }

        if (endpoint.Model.Boot is not { } boot)
            _question ??= $"how long does {endpoint.Model.Id} take to start? unplug one and look at the clock";
        else
            Last(endpoint.Id, port is null ? boot.Value.Value : port.UpSeconds);
        Ways(switches);
        // An earlier wave has somebody in it whose start is not known.
        if (port is { OnKnown: false })
            _question ??= $"when does the wave of {endpoint.Id} come up? the start of a device before it is not known";
    }

    /// <summary>Adds a switch.</summary>
    public void Add(string id, List<string> switches)
    {
        if (restart.UnitOf(id)?.BootSeconds is { } boot)
            Last(id, boot);
        Ways(switches);
    }

    /// <summary>The service with what was found.</summary>
    public KeptService Told(KeptService service)
    {
        var known = _question is null && _dark.Count < service.Ids.Count;
        var parts = new List<BackPart>();
        if (_last.Id is { } last)
            parts.Add(new(last, _last.Seconds));
        foreach (var unit in restart.Units)
        {
            if (unit.Switch is not null && service.Needs.Contains(unit.Id))
                parts.Add(new(unit.Id, unit.BootSeconds));
        }

        parts.Add(new("the line", restart.LineSeconds));
        var slowest = 0.0;
        foreach (var part in parts)
            slowest = Math.Max(slowest, part.Seconds ?? 0);
        return service with { Dark = _dark, BackSeconds = known ? slowest : null, LastId = _last.Id, BackQuestion = _question, Parts = parts };
    }

    private void Ways(List<string> switches)
    {
        foreach (var id in switches)
        {
            if (restart.UnitOf(id) is { BootSeconds: null, Switch: { } s })
                _question ??= $"how long does {s.Switch.Model.Id} take to start? pull its plug once and look at the clock";
        }
    }

    private void Last(string id, double seconds)
    {
        if (seconds > _last.Seconds)
            _last = (seconds, id);
    }
}

using Headroom.Domain.Jobs;

namespace Headroom.Engineering.Years;

/// <summary>Puts devices like one into a copy of a site, one after the other, each with a run of its own.</summary>
internal sealed class Adding(LaterSite site, Endpoint like)
{
    private readonly List<Endpoint> _endpoints = [.. site.Job.Survey.Endpoints];
    private readonly List<Drop> _drops = [.. site.Job.Survey.Drops];
    private readonly List<Patch> _patch = [.. site.Design.Patch];
    private readonly List<string> _added = [];
    private readonly Queue<PortRef> _free = new(FreePorts.Of(site));
    private readonly Drop? _run = site.Job.Survey.Drops.FirstOrDefault(drop => drop.Id == like.Drop);
    private readonly bool _powered = site.Catalogue.Endpoints.GetValueOrDefault(like.Model)?.Power is not null;

    /// <summary>How many have a supply of their own and found no free port.</summary>
    public int WithoutPort { get; private set; }

    /// <summary>The site with all that was put in.</summary>
    public LaterSite Site => site.With(
        site.Design with { Patch = _patch },
        site.Job.Survey with { Drops = _drops, Endpoints = [.. _endpoints.Select(Recorded)] });

    /// <summary>Puts one in.</summary>
    public void Add(string id)
    {
        var drop = _run is null ? null : _run with { Id = $"{_run.Id}+{id}", Existing = false };
        if (drop is not null)
            _drops.Add(drop);
        _endpoints.Add(like with { Id = id, Drop = drop?.Id, CountedAs = null, Hardware = null, Recorder = null });
        _added.Add(id);
        // Who takes power over the cable is given a port by the binding, as everywhere; the others are plugged in here.
        if (_powered)
            return;
        if (_free.TryDequeue(out var port))
            _patch.Add(new Patch(drop?.Id ?? id, port, like.At));
        else
            WithoutPort++;
    }

    // What records its like records it as well.
    private Endpoint Recorded(Endpoint endpoint) => endpoint.Recorder is { Records.Count: > 0 } recorder && recorder.Records.Contains(like.Id)
        ? endpoint with { Recorder = recorder with { Records = [.. recorder.Records, .. _added] } }
        : endpoint;
}

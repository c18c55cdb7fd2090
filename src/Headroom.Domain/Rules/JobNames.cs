using Headroom.Domain.Catalogues;
using Headroom.Domain.Jobs;

namespace Headroom.Domain.Rules;

/// <summary>What a job and its catalogue hold, by name; of two things of one name the first.</summary>
internal sealed class JobNames(Job job, Catalogue catalogue)
{
    /// <summary>The job.</summary>
    public Job Job { get; } = job;

    /// <summary>The catalogue.</summary>
    public Catalogue Catalogue { get; } = catalogue;

    /// <summary>Spaces by id.</summary>
    public Dictionary<string, Space> Spaces { get; } = By(job.Survey.Spaces, s => s.Id);

    /// <summary>Racks by id.</summary>
    public Dictionary<string, Rack> Racks { get; } = By(job.Survey.Racks, r => r.Id);

    /// <summary>Listeners by id.</summary>
    public Dictionary<string, Listener> Listeners { get; } = By(job.Survey.Listeners, l => l.Id);

    /// <summary>The client's own noises by id.</summary>
    public Dictionary<string, Noise> Noises { get; } = By(job.Survey.Noises, n => n.Id);

    /// <summary>Pathways by id.</summary>
    public Dictionary<string, Pathway> Pathways { get; } = By(job.Survey.Pathways, p => p.Id);

    /// <summary>Drops by id.</summary>
    public Dictionary<string, Drop> Drops { get; } = By(job.Survey.Drops, d => d.Id);

    /// <summary>Endpoints by id.</summary>
    public Dictionary<string, Endpoint> Endpoints { get; } = By(job.Survey.Endpoints, e => e.Id);

    /// <summary>Designs by id, as written.</summary>
    public Dictionary<string, Design> Designs { get; } = By(job.Designs, d => d.Id);

    /// <summary>The ids of drops and endpoints: what can be patched.</summary>
    public IReadOnlyList<string> Patchable => field ??= [.. Drops.Keys.Concat(Endpoints.Keys).Distinct()];

    /// <summary>The ids of spaces and racks: where a unit can stand.</summary>
    public IReadOnlyList<string> Standings => field ??= [.. Spaces.Keys.Concat(Racks.Keys)];

    /// <summary>The ids of copper and fibre cable models.</summary>
    public IReadOnlyList<string> CableModels => field ??= [.. Catalogue.Cables.Keys.Concat(Catalogue.Fibres.Keys)];

    /// <summary>Things by id.</summary>
    /// <typeparam name="T">The kind of thing.</typeparam>
    /// <param name="things">The things.</param>
    /// <param name="id">How to tell the id.</param>
    /// <returns>The first thing of each id.</returns>
    public static Dictionary<string, T> By<T>(IReadOnlyList<T> things, Func<T, string> id)
    {
        var by = new Dictionary<string, T>(things.Count);
        foreach (var thing in things)
            by.TryAdd(id(thing), thing);
        return by;
    }
}

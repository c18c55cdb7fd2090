using Headroom.Domain.Catalogues;
using Headroom.Domain.Jobs;

namespace Headroom.Engineering.Binding;

/// <summary>Binds a design to the catalogue: names become objects, once, for all disciplines.</summary>
public static class Binder
{
    /// <summary>Binds one design of a job.</summary>
    /// <param name="job">A job without errors.</param>
    /// <param name="catalogue">The catalogue.</param>
    /// <param name="design">The whole design (<see cref="DesignLineage.Whole"/>).</param>
    /// <param name="counts">Changes of what switches reserve by, for this study only.</param>
    /// <returns>The bound design.</returns>
    /// <exception cref="ArgumentException">A name is not in the catalogue: the job was not checked.</exception>
    public static BoundDesign Bind(Job job, Catalogue catalogue, Design design, IReadOnlyList<CountAs> counts)
    {
        if (design.Building is { } building)
            job = job with { Survey = building.In(job.Survey) };
        var racks = job.Survey.Racks.ToDictionary(rack => rack.Id, rack => rack.In);
        var switches = design.Switches.Select(placed => Switch(placed, catalogue, racks, counts)).ToList();
        var injectors = design.Injectors
            .Select(placed => new BoundInjector(placed, Find(catalogue.Injectors, placed.Model, placed.Id), SpaceOf(placed.Standing, racks)))
            .ToList();
        var (ports, (runs, byDrop)) = Shares.Both(design.Patch.Count, () => new PortAssigner(switches, injectors, design), () => Runs(job, catalogue));
        var endpoints = Endpoints(job, catalogue, ports, byDrop);
        return new BoundDesign(job, catalogue, design, switches, injectors, endpoints, ports.Loose(endpoints)) { Runs = runs };
    }

    private static BoundSwitch Switch(
        PlacedSwitch placed, Catalogue catalogue, Dictionary<string, string> racks, IReadOnlyList<CountAs> counts)
    {
        var model = Find(catalogue.Switches, placed.Model, placed.Id);
        var supply = placed.Supply is { } name
            ? model.Supplies.FirstOrDefault(s => s.Id == name) ?? throw new ArgumentException($"{model.Id} has no supply '{name}'; the job was not checked.", nameof(placed))
            : model.Supplies.Count > 0 ? model.Supplies[0] : null;
        var setting = placed.Setting.Over(model.Setting);
        foreach (var count in counts.Where(count => count.Switch is null || count.Switch == placed.Id))
            setting = setting with { ReservesBy = count.By };
        return new BoundSwitch(placed, model, supply, setting, SpaceOf(placed.Standing, racks));
    }

    private static (BoundRun[] Runs, Dictionary<string, BoundRun> ByDrop) Runs(Job job, Catalogue catalogue)
    {
        var binder = new RunBinder(job, catalogue);
        var runs = Shares.Map(job.Survey.Drops, binder.Bind);
        var byDrop = new Dictionary<string, BoundRun>(runs.Length);
        foreach (var run in runs)
            byDrop.TryAdd(run.Drop.Id, run);
        return (runs, byDrop);
    }

    private static BoundEndpoint[] Endpoints(Job job, Catalogue catalogue, PortAssigner ports, Dictionary<string, BoundRun> byDrop)
    {
        var bound = Shares.Map(job.Survey.Endpoints, endpoint =>
        {
            var model = Find(catalogue.Endpoints, endpoint.Model, endpoint.Id);
            var run = endpoint.Drop is { } id ? byDrop.GetValueOrDefault(id) : null;
            var port = ports.Patched(endpoint);
            return new BoundEndpoint(endpoint, model, run, port) { FromFarEnd = port?.Injector is { } injector ? RunBinder.FarEnd(run, injector.Space) : null };
        });
        for (var i = 0; i < bound.Length; i++)
        {
            if (bound[i].Port is null && bound[i].TakesPower)
                bound[i] = bound[i] with { Port = ports.Assume(bound[i]) };
        }

        return bound;
    }

    private static string? SpaceOf(Standing standing, Dictionary<string, string> racks) =>
        standing.In is null ? null : racks.GetValueOrDefault(standing.In, standing.In);

    private static T Find<T>(IReadOnlyDictionary<string, T> models, string? model, string user) =>
        model is not null && models.TryGetValue(model, out var found)
            ? found
            : throw new ArgumentException($"{user} has the model '{model}', which is not in the catalogue; the job was not checked.", nameof(model));
}

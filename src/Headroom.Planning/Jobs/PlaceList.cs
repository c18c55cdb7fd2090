using Headroom.Domain.Jobs;

namespace Headroom.Planning.Jobs;

/// <summary>Where switches may stand.</summary>
internal static class PlaceList
{
    /// <summary>The spaces where cables end; without any the spaces with a rack, the cupboards, else a place that nobody has named.</summary>
    public static IReadOnlyList<string?> Of(Job job, PlanPins pins)
    {
        var allowed = job.Survey.Spaces.Select(space => space.Id).Where(id => !pins.NotIn.Contains(id)).ToHashSet();
        var drops = job.Survey.Drops.ToDictionary(drop => drop.Id);
        var ends = job.Survey.Endpoints.Select(endpoint => endpoint.Drop is { } id && drops.TryGetValue(id, out var drop) ? drop.From : null).OfType<string>().Distinct().Where(id => !pins.NotIn.Contains(id)).ToList();
        var near = job.Survey.Endpoints.Any(endpoint => endpoint.Drop is null);
        var racks = near ? job.Survey.Racks.Select(rack => rack.In).Where(allowed.Contains).Distinct() : [];
        var places = ends.Concat(racks).Concat(Hubs(job, ends).Where(allowed.Contains)).Distinct().ToList<string?>();
        if (places.Count == 0)
            places = [.. job.Survey.Spaces.Where(space => space.Kind == "cupboard" && allowed.Contains(space.Id)).Select(space => space.Id)];
        return places.Count > 0 ? places : [job.Survey.Spaces.Select(space => space.Id).FirstOrDefault(allowed.Contains)];
    }

    // Where no endpoint ends but the fibres of two places meet.
    private static IEnumerable<string> Hubs(Job job, List<string> ends)
    {
        var used = job.Survey.Endpoints.Select(endpoint => endpoint.Drop).ToHashSet();
        var between = job.Survey.Drops.Where(drop => !used.Contains(drop.Id) && drop.To is not null && (ends.Contains(drop.From) || ends.Contains(drop.To))).ToList();
        return between.SelectMany(drop => new[] { drop.From, drop.To! }).Where(space => !ends.Contains(space))
            .GroupBy(space => space).Where(group => group.Count() > 1).Select(group => group.Key);
    }
}

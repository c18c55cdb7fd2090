namespace Headroom.Domain.Jobs;

/// <summary>What of the building a design changes: another cable, a vent, a wider conduit. What it does not say stays as it was surveyed.</summary>
public sealed record BuildingChange
{
    /// <summary>Drops whose cable, way or cords are others.</summary>
    public IReadOnlyList<DropChange> Drops { get; init; } = [];

    /// <summary>Pathways that are widened or shut off better.</summary>
    public IReadOnlyList<PathwayChange> Pathways { get; init; } = [];

    /// <summary>Spaces with other vents or walls.</summary>
    public IReadOnlyList<SpaceChange> Spaces { get; init; } = [];

    /// <summary>Walls whose door is sealed or exchanged.</summary>
    public IReadOnlyList<PartitionChange> Partitions { get; init; } = [];

    /// <summary>Racks that are others.</summary>
    public IReadOnlyList<RackChange> Racks { get; init; } = [];

    /// <summary>Lines out of the house that give more.</summary>
    public IReadOnlyList<LineChange> Lines { get; init; } = [];

    /// <summary>Endpoints that are set otherwise.</summary>
    public IReadOnlyList<EndpointChange> Endpoints { get; init; } = [];

    /// <summary>This change, completed by another where it does not say.</summary>
    /// <param name="other">The change to fall back on.</param>
    /// <returns>The completed change.</returns>
    public BuildingChange Over(BuildingChange other) => new()
    {
        Drops = Merge(other.Drops, Drops, change => change.Id, (under, over) => over.Over(under)),
        Pathways = Merge(other.Pathways, Pathways, change => change.Id, (under, over) => over.Over(under)),
        Spaces = Merge(other.Spaces, Spaces, change => change.Id, (under, over) => over.Over(under)),
        Partitions = Merge(other.Partitions, Partitions, change => change.Id, (under, over) => over.Over(under)),
        Racks = Merge(other.Racks, Racks, change => change.Id, (under, over) => over.Over(under)),
        Lines = Merge(other.Lines, Lines, change => change.Id, (under, over) => over.Over(under)),
        Endpoints = Merge(other.Endpoints, Endpoints, change => change.Id, (under, over) => over.Over(under)),
    };

    /// <summary>The building as it is with the change.</summary>
    /// <param name="survey">The building as surveyed.</param>
    /// <returns>A survey with the same things in the same order.</returns>
    public Survey In(Survey survey) => survey with
    {
        Drops = Changed(survey.Drops, Drops, drop => drop.Id, change => change.Id, (drop, change) => change.In(drop)),
        Pathways = Changed(survey.Pathways, Pathways, way => way.Id, change => change.Id, (way, change) => change.In(way)),
        Spaces = Changed(survey.Spaces, Spaces, space => space.Id, change => change.Id, (space, change) => change.In(space)),
        Partitions = Changed(survey.Partitions, Partitions, wall => wall.Id, change => change.Id, (wall, change) => change.In(wall)),
        Racks = Changed(survey.Racks, Racks, rack => rack.Id, change => change.Id, (rack, change) => change.In(rack)),
        Lines = Changed(survey.Lines, Lines, line => line.Id, change => change.Id, (line, change) => change.In(line)),
        Endpoints = Changed(survey.Endpoints, Endpoints, endpoint => endpoint.Id, change => change.Id, (endpoint, change) => change.In(endpoint)),
    };

    private static IReadOnlyList<T> Merge<T>(IReadOnlyList<T> under, IReadOnlyList<T> over, Func<T, string> id, Func<T, T, T> complete)
        where T : class
    {
        if (under.Count == 0)
            return over;
        var merged = new List<T>(under);
        foreach (var change in over)
        {
            var at = merged.FindIndex(one => id(one) == id(change));
            if (at < 0)
                merged.Add(change);
            else
                merged[at] = complete(merged[at], change);
        }

        return merged;
    }

    private static IReadOnlyList<T> Changed<T, TChange>(
        IReadOnlyList<T> things, IReadOnlyList<TChange> changes, Func<T, string> id, Func<TChange, string> of, Func<T, TChange, T> apply)
        where T : class
        where TChange : class
    {
        if (changes.Count == 0)
            return things;
        var byId = new Dictionary<string, TChange>(changes.Count);
        foreach (var change in changes)
            byId[of(change)] = change;
        var changed = new List<T>(things.Count);
        foreach (var thing in things)
            changed.Add(byId.TryGetValue(id(thing), out var change) ? apply(thing, change) : thing);
        return changed;
    }
}

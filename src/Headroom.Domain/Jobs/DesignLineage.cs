namespace Headroom.Domain.Jobs;

/// <summary>Completes a design that only says what differs from another.</summary>
public static class DesignLineage
{
    /// <summary>The design with everything it takes over from the designs it is like.</summary>
    /// <param name="job">The job.</param>
    /// <param name="id">The id of the design.</param>
    /// <returns>The whole design, or null when the job has none of that id, or its line of likeness is broken or runs in a ring.</returns>
    public static Design? Whole(Job job, string id)
    {
        var line = new List<Design>();
        var next = id;
        while (next is not null)
        {
            var design = job.Designs.FirstOrDefault(d => d.Id == next);
            if (design is null || line.Contains(design))
                return null;
            line.Add(design);
            next = design.Like;
        }

        line.Reverse();
        return line.Skip(1).Aggregate(line[0], Over);
    }

    private static Design Over(Design under, Design over) => over with
    {
        Like = null,
        Switches = Merge(under.Switches, over.Switches, over.Removed, (s => s.Id, SwitchOver)),
        Injectors = Merge(under.Injectors, over.Injectors, over.Removed, (i => i.Id, InjectorOver)),
        Standby = Merge(under.Standby, over.Standby, over.Removed, (s => s.Id, StandbyOver)),
        Uplinks = over.Uplinks ?? (over.Removed.Contains("uplinks") ? [] : under.Uplinks),
        Fittings = Merge(under.Fittings, over.Fittings, over.Removed, (f => f.Id, (_, mine) => mine)),
        Patch = Merge(under.Patch, over.Patch, over.Removed, (p => p.What, (_, mine) => mine)),
        Building = under.Building is { } below ? over.Building?.Over(below) ?? below : over.Building,
        Removed = [],
    };

    private static List<T> Merge<T>(
        IReadOnlyList<T> under, IReadOnlyList<T> over, IReadOnlyList<string> removed, (Func<T, string> Id, Func<T, T, T> Over) how)
    {
        var gone = removed.ToHashSet();
        // Of two things of one id the last counts here; the rules of the job report that there are two.
        var mine = new Dictionary<string, T>(over.Count);
        foreach (var item in over)
            mine[how.Id(item)] = item;
        var merged = new List<T>(under.Count + over.Count);
        foreach (var item in under)
        {
            var id = how.Id(item);
            if (mine.Remove(id, out var changed))
                merged.Add(how.Over(item, changed));
            else if (!gone.Contains(id))
                merged.Add(item);
        }

        merged.AddRange(over.Where(item => mine.ContainsKey(how.Id(item))));
        return merged;
    }

    private static PlacedSwitch SwitchOver(PlacedSwitch under, PlacedSwitch over) => over with
    {
        Model = over.Model ?? under.Model,
        Supply = over.Supply ?? (over.Model is null || over.Model == under.Model ? under.Supply : null),
        Standing = Stands((over.Standing, over.Model), (under.Standing, under.Model)),
        FedBy = over.FedBy ?? under.FedBy,
        Level = over.Level ?? under.Level,
        Fan = over.Fan ?? under.Fan,
        Air = over.Air ?? under.Air,
        Setting = over.Setting.Over(under.Setting),
        PassivePorts = over.PassivePorts ?? under.PassivePorts,
    };

    // Another model is another unit: it was not put in on the day of the one before.
    private static Standing Stands((Standing Standing, string? Model) over, (Standing Standing, string? Model) under) => over.Standing.Over(
        over.Model is null || over.Model == under.Model ? under.Standing : under.Standing with { Since = null });

    private static PlacedInjector InjectorOver(PlacedInjector under, PlacedInjector over) => over with
    {
        Model = over.Model ?? under.Model,
        Standing = Stands((over.Standing, over.Model), (under.Standing, under.Model)),
        FedBy = over.FedBy ?? under.FedBy,
        From = over.From.Count > 0 ? over.From : under.From,
    };

    private static PlacedStandby StandbyOver(PlacedStandby under, PlacedStandby over) => over with
    {
        Model = over.Model ?? under.Model,
        Standing = Stands((over.Standing, over.Model), (under.Standing, under.Model)),
        BatteryAge = over.BatteryAge ?? under.BatteryAge,
        Wanted = over.Wanted ?? under.Wanted,
        Also = over.Also ?? under.Also,
        Sheds = over.Sheds ?? under.Sheds,
    };
}

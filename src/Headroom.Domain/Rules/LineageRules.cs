using Headroom.Domain.Jobs;

namespace Headroom.Domain.Rules;

/// <summary>Designs are like designs that exist, in a line that ends; what they take away is there.</summary>
internal static class LineageRules
{
    /// <summary>Checks the choice, and each design as written.</summary>
    public static void Check(JobNames names, Slips slips)
    {
        if (names.Job.Chosen is { } chosen && !names.Designs.ContainsKey(chosen))
            slips.Unknown(RuleCodes.UnknownDesign, names.Job.At, new("design", chosen, "the choice"), names.Designs.Keys);
        var walked = new HashSet<string>();
        foreach (var design in names.Job.Designs)
        {
            if (design.Like is { } like && !names.Designs.ContainsKey(like))
                slips.Unknown(RuleCodes.UnknownDesign, design.At, new("design", like, $"design {design.Id}"), names.Designs.Keys);
            Ring(design, names, walked, slips);
            Removed(design, names, slips);
        }
    }

    private static void Ring(Design design, JobNames names, HashSet<string> walked, Slips slips)
    {
        var line = new List<string>();
        var next = design;
        while (next is not null && walked.Add(next.Id))
        {
            line.Add(next.Id);
            next = next.Like is { } like ? names.Designs.GetValueOrDefault(like) : null;
        }

        var start = next is null ? -1 : line.IndexOf(next.Id);
        if (start < 0)
            return;
        var ring = string.Join(" -> ", line.Skip(start).Append(next!.Id));
        slips.Add(
            RuleCodes.LikeRing,
            next.At,
            new($"the designs are like each other in a ring: {ring}", "one design of a line stands alone", "Take 'like' out of one of them and write that design in full."));
    }

    private static void Removed(Design design, JobNames names, Slips slips)
    {
        if (design.Removed.Count == 0)
            return;
        var under = design.Like is null ? null : DesignLineage.Whole(names.Job, design.Like);
        if (under is null && design.Like is not null)
            return;
        var there = Takeable(under);
        foreach (var gone in design.Removed.Where(gone => gone != "uplinks" && !there.Contains(gone)))
            slips.Unknown(RuleCodes.NothingToRemove, design.At, new("unit or patch", gone, $"'none' in design {design.Id}", "to be taken away"), there);
    }

    private static HashSet<string> Takeable(Design? under) => under is null
        ? []
        : [.. under.Switches.Select(s => s.Id), .. under.Injectors.Select(i => i.Id), .. under.Standby.Select(s => s.Id), .. under.Fittings.Select(f => f.Id), .. under.Patch.Select(p => p.What)];
}

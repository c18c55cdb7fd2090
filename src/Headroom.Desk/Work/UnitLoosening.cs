using Headroom.Domain.Jobs;
using Headroom.JobFiles.Changes;
using Headroom.JobFiles.Editing;

namespace Headroom.Desk.Work;

/// <summary>What hangs on a unit that is taken out of a design: its cords and its links go with it.</summary>
internal static class UnitLoosening
{
    /// <summary>The changes that go with it; empty when nothing hangs on it.</summary>
    /// <param name="open">The job.</param>
    /// <param name="design">The id of the design.</param>
    /// <param name="gone">The units that are taken out.</param>
    public static List<FieldChange> Of(OpenJob open, string design, IReadOnlyCollection<string> gone)
    {
        if (gone.Count == 0 || open.Read is not { } job || job.Designs.FirstOrDefault(one => one.Id == design) is not { } written || DesignLineage.Whole(job, design) is not { } whole)
            return [];
        var under = written.Like is { } like ? DesignLineage.Whole(job, like) : null;
        var changes = new List<FieldChange>();
        foreach (var (key, value) in JobTable.Written(open.Text.Text, design, "patch").Where(cord => gone.Contains(cord.Value.Split('/')[0])))
            changes.Add(new(["designs", design, "patch", key], value, null));
        // A cord that another design has is taken away by saying so.
        var own = written.Patch.ToDictionary(cord => cord.What, cord => cord.To.Unit);
        changes.AddRange((under?.Patch ?? []).Where(cord => own.TryGetValue(cord.What, out var unit) ? gone.Contains(unit) : gone.Contains(cord.To.Unit) && !written.Removed.Contains(cord.What))
            .Select(cord => new FieldChange(["designs", design, "patch", cord.What], null, "none")));
        if (whole.Uplinks is { } links && links.Any(link => Ends(link, gone)))
            changes.Add(new(["designs", design, JobTable.Links], "", Linked([.. links.Where(link => !Ends(link, gone))], under?.Uplinks is not null)));
        return changes;
    }

    /// <summary>Links as they are written on one line; null where none are left and none have to be taken away.</summary>
    /// <param name="links">The links.</param>
    /// <param name="taken">True when the design it is like has some.</param>
    public static string? Linked(IReadOnlyList<Uplink> links, bool taken) =>
        links.Count > 0 ? $"[{string.Join(", ", links.Select(DesignText.Link))}]" : taken ? "none" : null;

    private static bool Ends(Uplink link, IReadOnlyCollection<string> gone) => gone.Contains(link.From.Unit) || gone.Contains(link.To.Unit);
}

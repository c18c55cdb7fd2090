using Headroom.Engineering;
using Headroom.JobFiles;

namespace Headroom.Desk.Work;

/// <summary>What may stand in the cells of a table, so that nobody has to remember it: models of the catalogue, and names of the job.</summary>
internal static class KnownNames
{
    private const int Most = 400;

    // The kinds of models that a part of a job names.
    private static readonly Dictionary<string, string> Kinds = new()
    {
        ["endpoints"] = "endpoints", ["switches"] = "switches", ["injectors"] = "injectors", ["midspans"] = "injectors", ["standby"] = "standby",
    };

    /// <summary>The names, by the key of their column.</summary>
    /// <param name="open">The job.</param>
    /// <param name="part">The part of the job.</param>
    /// <param name="design">The design; null for the chosen one.</param>
    public static IReadOnlyDictionary<string, IReadOnlyList<string>> Of(OpenJob open, string part, string? design = null)
    {
        var models = CatalogueFiles.Names(open.Models.Models);
        IReadOnlyList<string> Of(string kind) => models.GetValueOrDefault(kind) is { } names ? [.. names.Order(StringComparer.Ordinal).Take(Most)] : [];
        var lists = new Dictionary<string, IReadOnlyList<string>> { ["cable"] = Of("cables"), ["module"] = Of("modules"), ["far module"] = Of("modules"), ["fan"] = Of("fans"), ["cabinet"] = Of("cabinets") };
        if (Kinds.TryGetValue(part, out var kind))
            lists["model"] = Of(kind);
        if (open.Read is { } job)
        {
            IReadOnlyList<string> spaces = [.. job.Survey.Spaces.Select(space => space.Id)];
            (lists["from"], lists["to"], lists["near"]) = part is "drops" or "endpoints" ? (spaces, spaces, spaces) : ([], [], []);
            lists["in"] = [.. spaces, .. job.Survey.Racks.Select(rack => rack.Id)];
            lists["drop"] = [.. job.Survey.Drops.Select(drop => drop.Id).Take(Most)];
            lists["fed-by"] = Study.DesignOf(job, design) is { } whole ? [.. whole.Standby.Select(unit => unit.Id)] : [];
        }

        return lists.Where(list => list.Value.Count > 0).ToDictionary(list => list.Key, list => list.Value);
    }
}

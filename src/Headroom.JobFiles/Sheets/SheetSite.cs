using Headroom.JobFiles.Jobs;
using Headroom.JobFiles.Yaml;

namespace Headroom.JobFiles.Sheets;

/// <summary>What the job around a sheet says already, for answers that are probable.</summary>
/// <param name="root">The job as read so far, with the sheets before this one.</param>
internal sealed class SheetSite(YamlMap root)
{
    /// <summary>The design that cords belong to when nobody names one: the chosen, or the only one; null when there are several or none.</summary>
    public string? Design => root.Find("chosen")?.Value is YamlScalar { Text.Length: > 0 } chosen
        ? chosen.Text
        : Designs is [var only] ? only : null;

    /// <summary>The designs by name.</summary>
    public IReadOnlyList<string> Designs => Keys(root.Find("designs")?.Value);

    /// <summary>The names of the drops, ranges counted through.</summary>
    public IReadOnlySet<string> Drops => _drops ??= [.. Keys(InSurvey("drops")).SelectMany(Names)];

    /// <summary>The space in which most drops of the job start, or its one cupboard; null when nothing tells.</summary>
    public string? UsualStart =>
        Entries(InSurvey("drops")).Select(entry => (entry.Value as YamlMap)?.Find("from")?.Value).OfType<YamlScalar>()
            .GroupBy(from => from.Text).OrderByDescending(group => group.Count()).FirstOrDefault()?.Key
        ?? (Entries(InSurvey("spaces")).Where(IsCupboard).ToList() is [var only] ? only.Key.Text : null);

    private HashSet<string>? _drops;

    private YamlNode? InSurvey(string key) => (root.Find("survey")?.Value as YamlMap)?.Find(key)?.Value;

    private static bool IsCupboard(YamlEntry space) => (space.Value as YamlMap)?.Find("kind")?.Value is YamlScalar { Text: "cupboard" or "plant room" };

    private static IReadOnlyList<YamlEntry> Entries(YamlNode? node) => (node as YamlMap)?.Entries ?? [];

    private static List<string> Keys(YamlNode? node) => [.. Entries(node).Select(entry => entry.Key.Text)];

    private static IReadOnlyList<string> Names(string key)
    {
        var ends = key.Split("..", StringSplitOptions.TrimEntries);
        return ends.Length == 2 && NameRange.Names(ends[0], ends[1]) is { } names ? names : ends;
    }
}

using Headroom.Domain.Findings;
using Headroom.JobFiles.Editing;
using Headroom.JobFiles.Yaml;

namespace Headroom.JobFiles.Changes;

/// <summary>Finds the field at a place of a job file, so that a finding can be shown where it was typed.</summary>
/// <param name="text">The text of the job.</param>
public sealed class JobOutline(string text)
{
    private readonly YamlNode? _root = YamlText.Parse(text, "").Value;

    /// <summary>The keys that lead to the deepest thing at a place; empty when it is none.</summary>
    /// <param name="at">The place; its file is not looked at.</param>
    public IReadOnlyList<string> PathAt(Place at)
    {
        var path = new List<string>();
        for (var node = _root as YamlMap; node is not null;)
        {
            var entry = node.Entries.LastOrDefault(one => IsBefore(one.Key.At, at));
            if (entry is null)
                break;
            path.Add(entry.Key.Text);
            node = IsBefore(entry.Value.At, at) ? entry.Value as YamlMap : null;
        }

        return path;
    }

    /// <summary>What stands behind the keys that lead to it, on one line.</summary>
    /// <param name="path">The keys from the top.</param>
    /// <returns>The value as written; null when nothing stands there.</returns>
    public string? ValueAt(IReadOnlyList<string> path)
    {
        YamlNode? at = _root;
        foreach (var key in path)
            at = (at as YamlMap)?.Find(key)?.Value;
        return at is null or YamlScalar { IsEmpty: true } ? null : YamlWriter.Flow(at);
    }

    /// <summary>The keys of a map.</summary>
    /// <param name="path">The keys that lead to it from the top.</param>
    /// <returns>Its keys in the order written; empty when no map stands there.</returns>
    public IReadOnlyList<string> KeysAt(IReadOnlyList<string> path)
    {
        YamlNode? at = _root;
        foreach (var key in path)
            at = (at as YamlMap)?.Find(key)?.Value;
        return at is YamlMap map ? [.. map.Entries.Select(entry => entry.Key.Text)] : [];
    }

    private static bool IsBefore(Place one, Place at) => one.Line < at.Line || (one.Line == at.Line && one.Column <= at.Column);
}

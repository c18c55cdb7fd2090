using Headroom.Domain.Findings;
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

    private static bool IsBefore(Place one, Place at) => one.Line < at.Line || (one.Line == at.Line && one.Column <= at.Column);
}

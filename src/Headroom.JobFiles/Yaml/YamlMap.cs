using Headroom.Domain.Findings;

namespace Headroom.JobFiles.Yaml;

/// <summary>Keys with values, in the order written.</summary>
/// <param name="entries">The entries; of a key written twice only the first.</param>
/// <param name="isFlow">True when written in braces.</param>
/// <param name="at">Where it begins.</param>
/// <param name="span">The indexes of its first character and behind its last.</param>
public sealed class YamlMap(IReadOnlyList<YamlEntry> entries, bool isFlow, Place at, (int Start, int End) span) : YamlNode(at, span.Start, span.End)
{
    /// <summary>The entries, in the order written; of a key written twice only the first.</summary>
    public IReadOnlyList<YamlEntry> Entries { get; } = entries;

    /// <summary>True when written in braces, <c>{a: 1}</c>; false when written as lines.</summary>
    public bool IsFlow { get; } = isFlow;

    /// <inheritdoc/>
    public override string What => "a map of keys";

    /// <summary>Finds an entry.</summary>
    /// <param name="key">The key; a hyphen and a space are the same.</param>
    /// <returns>The entry, or null when there is none.</returns>
    public YamlEntry? Find(string key)
    {
        foreach (var entry in Entries)
        {
            if (YamlKey.Same(entry.Key.Text, key))
                return entry;
        }

        return null;
    }
}

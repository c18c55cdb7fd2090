namespace Headroom.JobFiles.Changes;

/// <summary>One field of a job file that is written otherwise, put in or taken out.</summary>
/// <param name="Path">The keys that lead to it from the top; behind those of a list <see cref="Item"/>.</param>
/// <param name="Before">What stood there, on one line as a file has it; null for nothing.</param>
/// <param name="After">What stands there; null for nothing.</param>
public sealed record FieldChange(IReadOnlyList<string> Path, string? Before, string? After)
{
    /// <summary>Stands behind the keys of a list, of which items are put in behind, taken out, or exchanged.</summary>
    public const string Item = "*";

    private const int Longest = 60;

    // What lies in between says nothing that the name does not.
    private static readonly string[] Quiet = ["survey"];

    /// <summary>The change in words: <c>length of K-01 of drops: 14 m, was 12 m</c>.</summary>
    public string InWords => (Before, After) switch
    {
        (null, { } after) => $"{Name}: {Short(after)}, new",
        ({ } before, null) => $"{Name}: taken out, was {Short(before)}",
        ({ } before, { } after) => $"{Name}: {Short(after)}, was {Short(before)}",
        _ => Name,
    };

    /// <summary>The field in words: <c>length of K-01 of drops</c>.</summary>
    public string Name => string.Join(" of ", Path.Where((key, depth) => key != Item && !(depth == 0 && Path.Count > 1 && Quiet.Contains(key))).Reverse());

    /// <summary>True when both are of one field, or one lies within the other.</summary>
    /// <param name="other">The other.</param>
    public bool Touches(FieldChange other)
    {
        var depth = Math.Min(Path.Count, other.Path.Count);
        for (var at = 0; at < depth; at++)
        {
            if (!Yaml.YamlKey.Same(Path[at], other.Path[at]))
                return false;
        }

        // Items put in by two people stand one after the other; one that both exchange or take out does not.
        return Path[^1] != Item || other.Path[^1] != Item || (Before is not null && Before == other.Before);
    }

    /// <summary>True when both say the same.</summary>
    /// <param name="other">The other.</param>
    public bool SameAs(FieldChange other) => Path.SequenceEqual(other.Path) && Before == other.Before && After == other.After;

    private static string Short(string text) => text.Length <= Longest ? text : text[..(Longest - 3)] + "...";
}

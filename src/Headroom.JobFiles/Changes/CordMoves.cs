using Headroom.JobFiles.Fields;
using Headroom.JobFiles.Jobs;

namespace Headroom.JobFiles.Changes;

/// <summary>Moves cords to other ports in the text of a job. A range of names of which one is moved falls into what stands before and behind it.</summary>
public static class CordMoves
{
    /// <summary>The changes that put cords onto ports.</summary>
    /// <param name="outline">The job.</param>
    /// <param name="design">The design.</param>
    /// <param name="wanted">The ports by the drops or endpoints whose cords are moved: <c>K-07</c> to <c>sw-1/5</c>; null for a cord that is pulled.</param>
    /// <param name="elsewhere">What the design that this one is like patches.</param>
    /// <returns>The changes, in the order in which they are to be made.</returns>
    public static IReadOnlyList<FieldChange> Of(JobOutline outline, string design, IReadOnlyDictionary<string, string?> wanted, IReadOnlyCollection<string> elsewhere)
    {
        string[] patch = ["designs", design, "patch"];
        var changes = new List<FieldChange>();
        var written = new HashSet<string>();
        foreach (var key in outline.KeysAt(patch))
        {
            var before = outline.ValueAt([.. patch, key]);
            var names = Names(key);
            if (before is null || !names.Any(wanted.ContainsKey))
                continue;
            written.UnionWith(names);
            if (names.Count == 1)
                changes.Add(new([.. patch, key], before, Port(names[0])));
            else if (Ports(before) is { } ports && ports.Count == names.Count)
                changes.AddRange([new([.. patch, key], before, null), .. Apart(patch, [.. names.Select((name, at) => (name, wanted.ContainsKey(name) ? Port(name) : ports[at], wanted.ContainsKey(name)))])]);
        }

        // What another design patches is patched otherwise here.
        changes.AddRange(wanted.Keys.Where(name => !written.Contains(name) && Port(name) is not null).Select(name => new FieldChange([.. patch, name], null, Port(name))));
        return changes;

        // Pulled out of what another design patches it has to be said.
        string? Port(string name) => wanted[name] ?? (elsewhere.Contains(name) ? "none" : null);
    }

    // Cords that stay keep together as far as they lie beside each other.
    private static IEnumerable<FieldChange> Apart(string[] patch, List<(string Name, string? Port, bool Moved)> cords)
    {
        for (var at = 0; at < cords.Count;)
        {
            var end = at + 1;
            while (end < cords.Count && !cords[at].Moved && !cords[end].Moved)
                end++;
            var (first, last) = (cords[at], cords[end - 1]);
            if (end - at > 1)
                yield return new([.. patch, $"{first.Name}..{last.Name}"], null, $"{first.Port}..{last.Port![(last.Port!.IndexOf('/') + 1)..]}");
            else if (first.Port is not null)
                yield return new([.. patch, first.Name], null, first.Port);
            at = end;
        }
    }

    private static IReadOnlyList<string> Names(string key)
    {
        var ends = key.Split("..", StringSplitOptions.TrimEntries);
        return ends.Length == 2 && NameRange.Names(ends[0], ends[1]) is { } names ? names : [key];
    }

    private static List<string>? Ports(string written)
    {
        var slash = written.IndexOf('/');
        return slash > 0 && PortNumbers.Read(written[(slash + 1)..]) is { } range ? [.. range.Numbers().Select(number => $"{written[..slash]}/{number}")] : null;
    }
}

using Headroom.JobFiles.Sheets;
using Headroom.JobFiles.Yaml;

namespace Headroom.JobFiles.Jobs;

/// <summary>Every name that stands as a key in a job, or in a row of its sheets, whether what it names could be read or not.</summary>
internal sealed class NamesWritten
{
    private readonly HashSet<string> _names = new(StringComparer.Ordinal);
    private bool _anything;

    /// <summary>The names in a tree and in rows that were left out of it.</summary>
    public static NamesWritten In(YamlNode tree, LeftRows? left)
    {
        var names = new NamesWritten { _anything = left?.Anything == true };
        names.Add(tree);
        foreach (var text in left?.Texts ?? (IEnumerable<string>)[])
            names.Add(text);
        return names;
    }

    /// <summary>True when something may have this name.</summary>
    public bool MayHave(string name) => _anything || _names.Contains(name) || _names.Contains(Counted(name));

    // 12 x pipit: pipit-1 and those behind it.
    private static string Counted(string name) => name.LastIndexOf('-') is > 0 and var at ? name[..at] : name;

    private void Add(YamlNode node)
    {
        if (node is YamlList list)
        {
            foreach (var item in list.Items)
                Add(item);
        }

        foreach (var entry in (node as YamlMap)?.Entries ?? [])
        {
            Add(entry.Key.Text);
            // What stands under these keys names things that stand elsewhere.
            if (entry.Key.Text is not ("patch" or "priority"))
                Add(entry.Value);
        }
    }

    // A key may stand for many: D-01..D-24, D-01 and D-02. One that cannot be understood may stand for anything.
    private void Add(string key)
    {
        if (key.IndexOf(" x ", StringComparison.Ordinal) is > 0 and var at)
            _names.Add(key[(at + 3)..].Trim());
        foreach (var part in key.Split(',', StringSplitOptions.TrimEntries))
        {
            _names.Add(part);
            var ends = part.Split("..", StringSplitOptions.TrimEntries);
            if (ends.Length == 2 && NameRange.Names(ends[0], ends[1]) is { } names)
                _names.UnionWith(names);
            else if (ends.Length > 1)
                _anything = true;
        }
    }
}

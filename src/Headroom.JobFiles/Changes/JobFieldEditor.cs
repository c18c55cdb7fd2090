using Headroom.Domain.Findings;
using Headroom.JobFiles.Editing;
using Headroom.JobFiles.Yaml;

namespace Headroom.JobFiles.Changes;

/// <summary>Changes single fields in the text of a job and leaves all else as it was written: remarks, order, line ends, layout.</summary>
/// <remarks>The edited text is read again. It is handed out only when it differs from the old one in what was asked for and in nothing else.</remarks>
public static class JobFieldEditor
{
    /// <summary>Makes changes, all or none.</summary>
    /// <param name="text">The text of the job.</param>
    /// <param name="changes">The changes. What is to be before is only asked of items of lists, which are found by it.</param>
    /// <returns>The edited text, or null with the finding that says why not.</returns>
    public static Edit Put(string text, IReadOnlyList<FieldChange> changes)
    {
        var edited = text;
        foreach (var change in changes)
        {
            var loaded = YamlText.Parse(edited, "");
            if (loaded is not { Ok: true, Value: YamlMap root })
                return new(null, loaded.Ok ? [Refuse(change)] : loaded.Findings);
            if (new FieldSplice(edited, root).Of(change) is not { } splice)
                return new(null, [Refuse(change)]);
            var next = splice.Apply(edited);
            if (YamlText.Parse(next, "") is not { Ok: true, Value: { } tree } || !IsRight(JobChanges.Between(root, tree), change))
                return new(null, [Refuse(change)]);
            edited = next;
        }

        return new(edited, []);
    }

    // One field differs, and says what it was to say; or none, when it said so already. With the last key of a map the map goes too.
    private static bool IsRight(List<FieldChange> found, FieldChange wanted)
    {
        if (found.Count == 0)
            return true;
        if (found is not [var only] || only.Path.Count > wanted.Path.Count || !only.Path.Zip(wanted.Path).All(keys => YamlKey.Same(keys.First, keys.Second)))
            return false;
        return only.Path.Count == wanted.Path.Count ? only.After == wanted.After && (only.Path[^1] != FieldChange.Item || only.Before == wanted.Before)
            : only.Path.Count < wanted.Path.Count && (wanted.After is null ? only.After is null : only.Before is null && only.After == Under(wanted, only.Path.Count));
    }

    // What is put in where the keys above were missing too is found as one new thing.
    private static string Under(FieldChange change, int depth)
    {
        var value = change.After!;
        for (var at = change.Path.Count - 1; at >= depth; at--)
            value = change.Path[at] == FieldChange.Item ? $"[{value}]" : $"{{{YamlWriter.Text(change.Path[at])}: {value}}}";
        return value;
    }

    private static Finding Refuse(FieldChange change) => new(
        Severity.Error, EditCodes.NotSafe.Code, Place.None, $"{Words.Short(change.Name)}, written in a way in which it cannot be changed safely", "plain lines or brackets", "change it in the job file by hand");
}

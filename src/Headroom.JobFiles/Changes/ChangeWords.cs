namespace Headroom.JobFiles.Changes;

/// <summary>Several changes in one sentence, for the list of revisions.</summary>
public static class ChangeWords
{
    private const int Most = 4;

    /// <summary>The sentence; empty when nothing that counts was changed.</summary>
    /// <param name="changes">The changes; null when they cannot be told.</param>
    public static string Of(IReadOnlyList<FieldChange>? changes)
    {
        if (changes is null || changes.Count == 0)
            return "";
        var told = string.Join("; ", changes.Take(Most).Select(change => change.InWords));
        return changes.Count > Most ? $"{told}; and {changes.Count - Most} more" : told;
    }
}

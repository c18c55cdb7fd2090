namespace Headroom.JobFiles.Changes;

/// <summary>Brings together what two people changed of one job, field by field. Nothing is ever decided for them: a field that both changed is a conflict.</summary>
public static class JobMerge
{
    /// <summary>Merges two changes of one text.</summary>
    /// <param name="before">The text that both began with.</param>
    /// <param name="mine">What the one made of it.</param>
    /// <param name="theirs">What the other made of it; its remarks and layout are kept.</param>
    /// <returns>Both changes and, where they go together, the text with both.</returns>
    public static MergedJob Merge(string before, string mine, string theirs)
    {
        if (JobChanges.Between(before, mine) is not { } my || JobChanges.Between(before, theirs) is not { } their)
            return new(null, [], [], []);
        var mineOnly = my.Where(change => !their.Any(change.SameAs)).ToList();
        var conflicts = mineOnly.SelectMany(change => their.Where(other => change.Touches(other) && !my.Any(other.SameAs)).Select(other => (change, other))).ToList();
        var text = conflicts.Count > 0 ? null : mineOnly.Count == 0 ? theirs : JobFieldEditor.Put(theirs, mineOnly).Text;
        return new(text, my, their, conflicts);
    }
}

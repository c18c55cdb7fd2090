namespace Headroom.JobFiles.Changes;

/// <summary>A row of a table: one thing, or a range of things alike, as it is written.</summary>
/// <param name="Name">Its name or range.</param>
/// <param name="Cells">What is written under each key, on one line; nothing for keys that are not written.</param>
public sealed record JobRow(string Name, IReadOnlyDictionary<string, string> Cells)
{
    /// <summary>True when it is written with keys, so that each can be changed; false for one that is only a name.</summary>
    public bool IsPlain { get; init; }
}

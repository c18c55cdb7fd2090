namespace Headroom.JobFiles.Changes;

/// <summary>A row of a table: one thing, or a range of things alike, as it is written.</summary>
/// <param name="Name">Its name or range.</param>
/// <param name="Cells">What is written under each key, on one line; nothing for keys that are not written.</param>
public sealed record JobRow(string Name, IReadOnlyDictionary<string, string> Cells)
{
    /// <summary>True when it is written with keys, so that each can be changed; false for one that is only a name.</summary>
    public bool IsPlain { get; init; }

    /// <summary>The design that its row comes from, where the one looked at says nothing of it; null when it is written there.</summary>
    public string? From { get; init; }

    /// <summary>What is taken over from the design it is like, where nothing is written over it; empty where there is none.</summary>
    public IReadOnlyDictionary<string, string> Under { get; init; } = new Dictionary<string, string>();
}

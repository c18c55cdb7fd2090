namespace Headroom.Engineering.Remedies;

/// <summary>For what remedies are sought.</summary>
/// <param name="Study">What is studied: the design and the day; every discipline counts.</param>
/// <param name="Entries">The ids of the entries to be helped; empty for all that are short or tight.</param>
public sealed record RemedyRequest(StudyRequest Study, IReadOnlyList<string> Entries)
{
    /// <summary>The kinds of remedy that are tried, by <see cref="Remedy.Kind"/>; empty for all.</summary>
    public IReadOnlyList<string> Kinds { get; init; } = [];
}

namespace Headroom.JobFiles.Changes;

/// <summary>What two people made of one text of a job.</summary>
/// <param name="Text">Both changes in one text; null when they do not go together.</param>
/// <param name="Mine">What the one changed.</param>
/// <param name="Theirs">What the other changed.</param>
/// <param name="Conflicts">The fields that both changed, each with what the one and the other made of it.</param>
public sealed record MergedJob(string? Text, IReadOnlyList<FieldChange> Mine, IReadOnlyList<FieldChange> Theirs, IReadOnlyList<(FieldChange Mine, FieldChange Theirs)> Conflicts);

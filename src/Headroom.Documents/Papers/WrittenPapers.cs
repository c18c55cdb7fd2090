namespace Headroom.Documents.Papers;

/// <summary>What was written.</summary>
/// <param name="Papers">The papers.</param>
/// <param name="Missing">Papers for which the job has nothing.</param>
public sealed record WrittenPapers(IReadOnlyList<WrittenPaper> Papers, IReadOnlyList<MissingPaper> Missing);

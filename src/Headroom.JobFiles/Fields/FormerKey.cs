namespace Headroom.JobFiles.Fields;

/// <summary>A key that a thing had once; it is refused, and what to write in place of it is said.</summary>
/// <param name="Name">The key.</param>
/// <param name="Advice">What to write.</param>
internal sealed record FormerKey(string Name, string Advice);

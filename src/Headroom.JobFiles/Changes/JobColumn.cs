namespace Headroom.JobFiles.Changes;

/// <summary>A key that the rows of a table may have.</summary>
/// <param name="Key">The key.</param>
/// <param name="About">What it is, in one sentence.</param>
/// <param name="Example">How a right value looks.</param>
public sealed record JobColumn(string Key, string About, string Example);

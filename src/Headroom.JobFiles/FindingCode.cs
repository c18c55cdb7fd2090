namespace Headroom.JobFiles;

/// <summary>A kind of finding, with the code by which people look it up.</summary>
/// <param name="Code">The stable code, such as <c>JOB010</c>.</param>
/// <param name="Meaning">What it means, in one sentence for the manual.</param>
public sealed record FindingCode(string Code, string Meaning);

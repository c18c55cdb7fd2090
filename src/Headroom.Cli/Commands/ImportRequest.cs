namespace Headroom.Cli.Commands;

/// <summary>What is to be told about a sheet that was read.</summary>
/// <param name="Job">The job file.</param>
/// <param name="Sheet">The sheet.</param>
/// <param name="Kind">What its rows are.</param>
/// <param name="All">Whether every row is listed.</param>
/// <param name="Writes">Whether the job is about to be written.</param>
internal sealed record ImportRequest(string Job, string Sheet, string Kind, bool All, bool Writes);

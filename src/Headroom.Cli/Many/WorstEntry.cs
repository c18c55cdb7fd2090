using Headroom.Domain.Ledgers;

namespace Headroom.Cli.Many;

/// <summary>The worst entry of a job: the first of its ledger.</summary>
/// <param name="Id">Its id.</param>
/// <param name="What">What it is a limit of.</param>
/// <param name="Verdict">Its verdict.</param>
/// <param name="Left">What is left, in its unit; null when not known.</param>
/// <param name="Unit">Its unit.</param>
internal sealed record WorstEntry(string Id, string What, Verdict Verdict, double? Left, string Unit);

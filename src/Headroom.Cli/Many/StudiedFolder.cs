using Headroom.Domain.Ledgers;

namespace Headroom.Cli.Many;

/// <summary>All jobs of a folder, studied: what was not worked out first, then worst first, then by name.</summary>
/// <param name="Folder">The folder as it was named.</param>
/// <param name="On">The day for which it was worked out.</param>
/// <param name="Jobs">The jobs.</param>
internal sealed record StudiedFolder(string Folder, DateOnly On, IReadOnlyList<StudiedJob> Jobs)
{
    /// <summary>Puts jobs in order.</summary>
    public static StudiedFolder Of(string folder, DateOnly on, IEnumerable<StudiedJob> jobs) => new(
        folder,
        on,
        [.. jobs.OrderBy(Rank).ThenByDescending(job => job.Count(Verdict.Short)).ThenByDescending(job => job.Count(Verdict.Tight)).ThenBy(job => job.Name, StringComparer.Ordinal)]);

    /// <summary>How many jobs have a verdict.</summary>
    public int Count(Verdict verdict) => Jobs.Count(job => job.NotWorked is null && job.Verdict == verdict);

    /// <summary>How many were not worked out.</summary>
    public int NotWorked => Jobs.Count(job => job.NotWorked is not null);

    /// <summary>How the command ends.</summary>
    public int ExitCodeOf(bool strict) => NotWorked > 0 ? ExitCode.NotWorked
        : Count(Verdict.Short) > 0 || (strict && Count(Verdict.Unknown) > 0) ? ExitCode.Short
        : ExitCode.NothingShort;

    // As a ledger is ordered: short, then tight, then unknown, then clear.
    private static int Rank(StudiedJob job) => job.NotWorked is not null ? 0 : job.Verdict switch
    {
        Verdict.Short => 1,
        Verdict.Tight => 2,
        Verdict.Unknown => 3,
        _ => 4,
    };
}

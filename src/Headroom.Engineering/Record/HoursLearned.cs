namespace Headroom.Engineering.Record;

/// <summary>How long jobs took beside what was estimated.</summary>
/// <param name="Ratios">Worked over estimated of each job of which both are known.</param>
/// <param name="Estimated">Hours estimated of those jobs together.</param>
/// <param name="Worked">Hours worked on them together.</param>
public sealed record HoursLearned(IReadOnlyList<decimal> Ratios, decimal Estimated, decimal Worked)
{
    /// <summary>Below so many jobs the factor says little: common practice, no source.</summary>
    public const int EnoughJobs = 5;

    /// <summary>Worked over estimated of all together; null when nothing was estimated.</summary>
    public decimal? Factor => Estimated > 0 ? Worked / Estimated : null;

    /// <summary>Standard deviation of the jobs' own factors; null below two jobs.</summary>
    public double? Scatter => Spread.Of([.. Ratios.Select(ratio => (double)ratio)]);

    /// <summary>True when there are jobs enough to plan by the factor.</summary>
    public bool IsEnough => Ratios.Count >= EnoughJobs;

    /// <summary>Adds up jobs. Source: arithmetic.</summary>
    /// <param name="jobs">The jobs.</param>
    /// <returns>What they say; null when of none both are known.</returns>
    public static HoursLearned? Of(IReadOnlyList<RecordedJob> jobs)
    {
        var both = jobs.Where(job => job.Overrun is not null).ToList();
        return both.Count == 0 ? null : new([.. both.Select(job => job.Overrun!.Value)], both.Sum(job => job.Row.Estimated!.Value), both.Sum(job => job.Row.Worked!.Value));
    }
}

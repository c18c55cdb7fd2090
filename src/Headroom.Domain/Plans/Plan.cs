namespace Headroom.Domain.Plans;

/// <summary>What a plan came to: designs to choose between, or why there is none.</summary>
/// <param name="Job">The name of the job.</param>
/// <param name="On">The day for which it was worked out.</param>
/// <param name="Proposals">The designs, the cheapest first; empty when none is possible.</param>
/// <param name="Refused">What was not offered, and why.</param>
/// <param name="Front">Cost against sound against room, the cheapest first.</param>
public sealed record Plan(string Job, DateOnly On, IReadOnlyList<Proposal> Proposals, IReadOnlyList<RefusedSet> Refused, IReadOnlyList<FrontPoint> Front)
{
    /// <summary>What was taken for granted, in words.</summary>
    public IReadOnlyList<string> Assumed { get; init; } = [];

    /// <summary>The smallest set of requirements that clash; empty when there are designs, or none was found.</summary>
    public IReadOnlyList<PlanClash> Clashes { get; init; } = [];

    /// <summary>True when it was stopped, so that another run may come to something else.</summary>
    public bool MayDiffer { get; init; }

    /// <summary>How many designs were studied.</summary>
    public int Studied { get; init; }

    /// <summary>What is wrong with what was asked, each in words; then nothing was planned.</summary>
    public IReadOnlyList<string> Complaints { get; init; } = [];
}

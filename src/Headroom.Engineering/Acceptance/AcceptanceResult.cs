using Headroom.Domain.Jobs;

namespace Headroom.Engineering.Acceptance;

/// <summary>The tester's file beside the schedule.</summary>
/// <param name="Job">The job.</param>
/// <param name="Limit">The limit that was agreed.</param>
/// <param name="LimitAssumed">True when nobody said which, and the commonest of the file was taken.</param>
/// <param name="Drops">Every drop of the schedule, in its order.</param>
/// <param name="Strange">Records under labels that are no drops.</param>
/// <param name="SavedTwice">Records that say the same as one before; they count once.</param>
public sealed record AcceptanceResult(
    Job Job, string Limit, bool LimitAssumed, IReadOnlyList<DropAcceptance> Drops, IReadOnlyList<StrangeLabel> Strange, IReadOnlyList<TesterResult> SavedTwice)
{
    /// <summary>How many drops stand so.</summary>
    /// <param name="standing">How.</param>
    /// <returns>The count; the three add up to the drops of the schedule.</returns>
    public int Count(DropStanding standing) => Drops.Count(drop => drop.Standing == standing);
}

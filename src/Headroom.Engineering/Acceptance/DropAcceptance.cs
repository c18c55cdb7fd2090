using Headroom.Domain.Jobs;

namespace Headroom.Engineering.Acceptance;

/// <summary>One drop of the schedule with its records.</summary>
/// <param name="Id">The drop.</param>
/// <param name="Standing">How it stands.</param>
/// <param name="Reason">Why it is open.</param>
/// <param name="Told">That in words, with what to do; empty when it is accepted.</param>
/// <param name="Records">Its records, the earliest first; one that was saved twice stands once.</param>
public sealed record DropAcceptance(string Id, DropStanding Standing, OpenReason Reason, string Told, IReadOnlyList<TesterResult> Records)
{
    /// <summary>The record that counts; null when there is none.</summary>
    public TesterResult? Last => Records.Count > 0 ? Records[^1] : null;

    /// <summary>True when it failed and was tested again; both records are kept.</summary>
    public bool Retested => Records.Take(Records.Count - 1).Any(record => record.Verdict == TesterVerdict.Fail);

    /// <summary>What its resistances say of its pairs, where they differ more than they may; empty otherwise.</summary>
    public IReadOnlyList<string> Pairs { get; init; } = [];
}

using Headroom.Domain.Jobs;
using Headroom.Domain.Ledgers;
using Headroom.Engineering.Binding;
using Headroom.Engineering.Differences;

namespace Headroom.Engineering.Remedies;

/// <summary>Studies a changed design and says whether it is a gain, and at which price.</summary>
internal sealed class RemedyJudge(Ledger before, IReadOnlyList<LedgerEntry> asked, RemedyCase at, StudyRequest request)
{
    private readonly double _amiss = Shortage.Of(before);
    private readonly HashSet<string> _warned = [.. before.Entries.SelectMany(entry => entry.Cautions).Select(caution => caution.Code)];
    private readonly HashSet<string> _asked = [.. asked.Select(entry => entry.Id)];
    private readonly RemedyPricing _pricing = new(at.Bound);

    /// <summary>The remedy that an idea is; null when the study calls it no gain.</summary>
    /// <param name="idea">The idea.</param>
    /// <param name="job">The job with the changed design.</param>
    /// <param name="design">The id of that design.</param>
    public Remedy? Of(RemedyIdea idea, Job job, string design)
    {
        var after = Study.Run(job, at.Catalogue, request with { Design = design });
        var difference = LedgerDifference.Of(before, after);
        var net = _amiss - Shortage.Of(after);
        var better = Better(after);
        var gone = difference.OnlyBefore.Where(entry => _asked.Contains(entry.Id) && Shortage.Of(entry) > 0).ToList();
        var gain = better.Sum(Gain) + gone.Sum(Shortage.Of);
        if (gain < RemedySearch.Least || net < RemedySearch.Least)
            return null;
        var bound = Binder.Bind(job, at.Catalogue, Study.DesignOf(job, design)!, request.Counts);
        var (certainty, why) = Trust(idea, better);
        return new Remedy(idea.Kind, idea.Text, idea.Change, after)
        {
            Better = better,
            Gone = gone,
            Worse = Worse(difference),
            NewlyAmiss = [.. difference.OnlyAfter.Where(entry => entry.Verdict != Verdict.Clear)],
            Gain = gain,
            NetGain = net,
            Cost = _pricing.Of(bound, idea),
            BuysNothing = idea.BuysNothing,
            Minutes = idea.Minutes,
            Cautions = [.. idea.Cautions.Concat(after.Entries.SelectMany(entry => entry.Cautions).Where(caution => !_warned.Contains(caution.Code))).DistinctBy(caution => caution.Code)],
            Certainty = certainty,
            CertaintyWhy = why,
        };
    }

    private static double Gain(EntryChange change) => Shortage.Of(change.Before) - Shortage.Of(change.After);

    private List<EntryChange> Better(Ledger after)
    {
        var changed = after.Entries.Where(entry => _asked.Contains(entry.Id)).ToDictionary(entry => entry.Id);
        return [.. asked.Where(entry => changed.ContainsKey(entry.Id)).Select(entry => new EntryChange(entry, changed[entry.Id]))
            .Where(change => Gain(change) >= RemedySearch.Least).OrderByDescending(Gain)];
    }

    private List<EntryChange> Worse(LedgerDifference difference) =>
    [
        .. difference.Verdicts.Concat(difference.Much).Where(change => Gain(change) <= -RemedySearch.Least || (change.Before.Verdict <= change.After.Verdict && change.Moved < 0 && !_asked.Contains(change.Before.Id)))
            .OrderBy(Gain).ThenBy(change => change.Share ?? 0),
    ];

    private static (Certainty Certainty, string? Why) Trust(RemedyIdea idea, List<EntryChange> better)
    {
        if (idea.Rough is { } rough)
            return (Certainty.Rough, rough);
        foreach (var change in better)
        {
            if (change.After.PlusMinus > Math.Abs(change.Moved ?? double.PositiveInfinity))
                return (Certainty.Fair, $"the gain at {change.After.Id} is smaller than the interval of the sum");
            if (change.After.Parts is { } parts && parts.Known < parts.All)
                return (Certainty.Fair, $"{parts.Known} of {parts.All} parts of {change.After.Id} are known");
        }

        return better.Find(change => change.After.Assumed.Count > 0) is { } assumed
            ? (Certainty.Fair, $"assumed at {assumed.After.Id}: {assumed.After.Assumed[0]}")
            : (Certainty.Sure, null);
    }
}

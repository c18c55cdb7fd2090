using Headroom.Domain.Catalogues;
using Headroom.Domain.Findings;
using Headroom.Domain.Jobs;
using Headroom.Domain.Ledgers;
using Headroom.Domain.Rules;

namespace Headroom.Engineering.Remedies;

/// <summary>Finds remedies: applies each idea to a copy of the design, studies the whole ledger again, keeps what gains, and ranks it.</summary>
public static class RemedySearch
{
    /// <summary>The most changed designs that are studied for one question.</summary>
    public const int Most = 600;

    // Of two changes whose ledgers differ by less, neither is better: a fiftieth of a reserve [1].
    internal const double Least = 0.02;

    private const string Changed = "changed";

    /// <summary>Finds remedies.</summary>
    /// <param name="job">A job without errors.</param>
    /// <param name="catalogue">The models it may use.</param>
    /// <param name="request">For what.</param>
    /// <param name="watch">Told how many are to be studied; gives what is told of each that is, from any thread. Null when nobody looks on.</param>
    /// <returns>The remedies; the same for the same input, always.</returns>
    /// <exception cref="ArgumentException">The design or an entry does not exist.</exception>
    public static RemedyResult Find(Job job, Catalogue catalogue, RemedyRequest request, Func<int, Action>? watch = null)
    {
        var whole = Study.DesignOf(job, request.Study.Design) ?? throw new ArgumentException($"'{request.Study.Design}' is no design of this job.", nameof(request));
        var study = request.Study with { Design = whole.Id, Only = null };
        var before = Study.Run(job, catalogue, study);
        var asked = Asked(before, request.Entries);
        var at = new RemedyCase(job, catalogue, whole, study);
        var ideas = Ideas(asked, at, request.Kinds);
        var tried = ideas.Take(Most).ToList();
        var done = watch?.Invoke(tried.Count);
        var judge = new RemedyJudge(before, asked, at, study);
        var found = new Remedy?[tried.Count];
        Parallel.For(0, tried.Count, index =>
        {
            found[index] = Studied(tried[index], at, judge);
            done?.Invoke();
        });
        var gains = found.OfType<Remedy>().ToList();
        var kept = Ranking.Of(gains, asked);
        var helpless = asked.Where(entry => !kept.Exists(remedy => remedy.Better.Any(change => change.Before.Id == entry.Id) || remedy.Gone.Any(gone => gone.Id == entry.Id)));
        return new RemedyResult(before, asked, kept, [.. helpless], tried.Count, tried.Count - gains.Count, gains.Count - kept.Count, ideas.Count - tried.Count);
    }

    private static List<LedgerEntry> Asked(Ledger before, IReadOnlyList<string> wanted)
    {
        if (wanted.Count == 0)
            return [.. before.Entries.Where(entry => entry.Verdict is Verdict.Short or Verdict.Tight)];
        var unknown = wanted.FirstOrDefault(id => before.Entries.All(entry => entry.Id != id));
        return unknown is null
            ? [.. before.Entries.Where(entry => wanted.Contains(entry.Id))]
            : throw new ArgumentException($"'{unknown}' is no entry of this ledger.", nameof(wanted));
    }

    // The same change may be thought of for several entries: it is tried once.
    private static List<RemedyIdea> Ideas(List<LedgerEntry> asked, RemedyCase at, IReadOnlyList<string> kinds)
    {
        var seen = new HashSet<string>();
        return [.. asked.SelectMany(entry => RemedyKinds.All.SelectMany(kind => kind.For(entry, at))).Where(idea => (kinds.Count == 0 || kinds.Contains(idea.Kind)) && seen.Add(idea.Text))];
    }

    private static Remedy? Studied(RemedyIdea idea, RemedyCase at, RemedyJudge judge)
    {
        var change = idea.Change with { Id = Changed };
        // Only the two designs, the first in full: what else the job holds is not touched.
        var job = at.Job with { Designs = [at.Design, change], Chosen = at.Design.Id };
        if (JobRules.Check(job, at.Catalogue).Any(finding => finding.Severity == Severity.Error))
            return null;
        return judge.Of(idea, job, Changed);
    }
}

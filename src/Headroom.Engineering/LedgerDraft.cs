using Headroom.Domain.Jobs;
using Headroom.Domain.Ledgers;
using Headroom.Engineering.Readings;

namespace Headroom.Engineering;

/// <summary>A ledger while the disciplines add to it, one after the other.</summary>
/// <param name="job">The job, for its readings and overrulings.</param>
/// <param name="wanted">The disciplines that are asked for.</param>
internal sealed class LedgerDraft(Job job, IReadOnlyList<string> wanted)
{
    private readonly List<LedgerEntry> _entries = [];
    private readonly List<Func<IEnumerable<Figure>>> _figures = [];
    private readonly List<Func<IEnumerable<Answer>>> _answers = [];
    private readonly ReadingBoard _board = new(job);

    /// <summary>True when a discipline is asked for.</summary>
    public bool Wants(string discipline) => wanted.Contains(discipline);

    /// <summary>Adds what a discipline came to.</summary>
    /// <param name="entries">Its entries.</param>
    /// <param name="expectations">Makes what it expects of readings, where there are any; null when nothing of it is measured.</param>
    /// <param name="figures">Makes its figures, when they are asked for; null for none.</param>
    /// <param name="answers">Makes its answers, when they are asked for; null for none.</param>
    public void Add(List<LedgerEntry> entries, Func<IExpectations>? expectations, Func<IEnumerable<Figure>>? figures, Func<IEnumerable<Answer>>? answers = null)
    {
        _entries.AddRange(expectations is null ? entries : _board.Beside(entries, expectations));
        if (figures is not null)
            _figures.Add(figures);
        if (answers is not null)
            _answers.Add(answers);
    }

    /// <summary>The ledger, worst entries first.</summary>
    public Ledger Ledger(string design, DateOnly on) =>
        new(job.Name, design, on, wanted, WorstFirst.Sorted(Overruled()), Late(_figures), Late(_answers), _board.Loose()) { LooseOverrulings = Loose() };

    private static LateList<T> Late<T>(List<Func<IEnumerable<T>>> of) => new(() => [.. of.SelectMany(make => make())]);

    private List<LedgerEntry> Overruled()
    {
        if (job.Overrulings.Count == 0)
            return _entries;
        var byEntry = job.Overrulings.GroupBy(o => o.Entry).ToDictionary(group => group.Key, group => group.Last());
        return _entries.ConvertAll(entry => byEntry.TryGetValue(entry.Id, out var overruling) ? entry with { Overruled = overruling } : entry);
    }

    private List<Overruling> Loose()
    {
        if (job.Overrulings.Count == 0)
            return [];
        var known = _entries.Select(entry => entry.Id).ToHashSet();
        return [.. job.Overrulings.Where(overruling => !known.Contains(overruling.Entry))];
    }
}

using Headroom.Domain.Jobs;

namespace Headroom.Domain.Ledgers;

/// <summary>Every limit of one design of a job: what is asked of it, what is left, and how that was worked out.</summary>
/// <param name="Job">The name of the job.</param>
/// <param name="Design">The id of the design.</param>
/// <param name="On">The day for which it was worked out.</param>
/// <param name="Disciplines">The disciplines that were worked out.</param>
/// <param name="Entries">The entries, worst first.</param>
/// <param name="Figures">Figures that have no limit but that others need, such as the heat a switch leaves in a cupboard.</param>
/// <param name="Answers">Answers in plain words to the questions people ask.</param>
/// <param name="LooseReadings">Readings with which no entry could be compared.</param>
public sealed record Ledger(
    string Job,
    string Design,
    DateOnly On,
    IReadOnlyList<string> Disciplines,
    IReadOnlyList<LedgerEntry> Entries,
    IReadOnlyList<Figure> Figures,
    IReadOnlyList<Answer> Answers,
    IReadOnlyList<LooseReading> LooseReadings)
{
    /// <summary>Overrulings of entries that were not worked out, or that there are not.</summary>
    public IReadOnlyList<Overruling> LooseOverrulings { get; init; } = [];

    /// <summary>The worst verdict of all entries: short, then unknown, then tight, then clear.</summary>
    public Verdict Verdict => Entries.Count == 0 ? Verdict.Unknown : Entries.Max(entry => entry.Verdict);

    /// <summary>How many entries have a verdict.</summary>
    /// <param name="verdict">The verdict.</param>
    /// <returns>The count.</returns>
    public int Count(Verdict verdict) => Entries.Count(entry => entry.Verdict == verdict);
}

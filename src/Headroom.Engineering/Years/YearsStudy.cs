using Headroom.Domain.Catalogues;
using Headroom.Domain.Jobs;
using Headroom.Domain.Ledgers;
using Headroom.Engineering.Money;

namespace Headroom.Engineering.Years;

/// <summary>Works out what becomes short over the years. Each year is a study of a changed copy of the job, never a sum of its own.</summary>
public static class YearsStudy
{
    /// <summary>The most years that may be asked for; beyond, nothing that is said of a rate is worth anything.</summary>
    public const int Most = 20;

    private const int Months = 12;

    /// <summary>Works out a design of a job, year by year.</summary>
    /// <param name="job">A job without errors.</param>
    /// <param name="catalogue">The models.</param>
    /// <param name="request">What is to be studied, and from which day on.</param>
    /// <param name="until">How many years; 1 to <see cref="Most"/>.</param>
    /// <returns>Today, each year, what turns first, and what is due.</returns>
    /// <exception cref="ArgumentException">The design does not exist: the job was not checked.</exception>
    public static YearsResult Of(Job job, Catalogue catalogue, StudyRequest request, int until)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(until, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(until, Most);
        var design = Study.DesignOf(job, request.Design) ?? throw new ArgumentException($"'{request.Design}' is no design of this job.", nameof(request));
        var later = new LaterStudy(job, catalogue, request, design);
        var before = later.At(0, Change.None);
        var years = new List<YearState>(until + 1) { State(0, before, []) };
        Turn? firstShort = null, firstTight = null;
        for (var year = 1; year <= until; year++)
        {
            var after = later.At(Months * year, Change.All);
            var turns = Turns(later, (before, after), year);
            firstShort ??= First(later, (before, turns), Verdict.Short, year);
            firstTight ??= First(later, (before, turns), Verdict.Tight, year);
            years.Add(State(year, after, turns));
            before = after;
        }

        return new YearsResult(
            job.Name, design.Id, years, firstShort, firstTight, DueDates.Of(job, catalogue, (request, design), until), YearRates.Of(job, design, catalogue), YearAssumptions.Of(job, years[^1]));
    }

    private static YearState State(int year, LaterLedger ledger, IReadOnlyList<Turn> turns) =>
        new(year, ledger.On, ledger.Entries.CountBy(entry => entry.Verdict).ToDictionary(), ledger.Added, turns);

    private static List<Turn> Turns(LaterStudy later, (LaterLedger Before, LaterLedger After) of, int year)
    {
        var worse = of.After.WorseThan(of.Before).ToList();
        if (worse.Count == 0)
            return [];
        // Each change by itself: what is as bad by one of them alone is put down to it. Where there is but one, it is the year itself.
        var alone = worse.Exists(entry => entry.Discipline != MoneyLedger.Discipline)
            ? later.Changes.Select(change => (Change: change, Ledger: later.Changes.Count == 1 ? of.After : later.At(of.After.Months, change))).ToList()
            : [];
        return worse.ConvertAll(entry => new Turn(
            entry, year, of.After.On, of.Before.Of(entry.Id)?.Verdict, of.Before.Of(entry.Id)?.Left,
            entry.Discipline == MoneyLedger.Discipline
                ? Change.Prices
                : alone.Where(one => one.Ledger.Of(entry.Id)?.Verdict >= entry.Verdict).Aggregate(Change.None, (by, one) => by | one.Change)));
    }

    // Halves the year until one month is left; within a year nothing is taken back.
    private static Turn? First(LaterStudy later, (LaterLedger Before, List<Turn> Turns) of, Verdict verdict, int year)
    {
        if (!of.Turns.Exists(turn => turn.Entry.Verdict == verdict))
            return null;
        var (low, high) = (Months * (year - 1), Months * year);
        var found = of.Turns.First(turn => turn.Entry.Verdict == verdict);
        while (high - low > 1)
        {
            var middle = later.At((low + high) / 2, Change.All);
            if (middle.WorseThan(of.Before).FirstOrDefault(entry => entry.Verdict == verdict) is not { } entry)
            {
                low = middle.Months;
                continue;
            }

            high = middle.Months;
            found = (of.Turns.Find(turn => turn.Entry.Id == entry.Id) ?? found) with { Entry = entry, On = middle.On };
        }

        return found;
    }
}

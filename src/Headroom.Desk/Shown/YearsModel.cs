using Headroom.Domain.Ledgers;
using Headroom.Domain.Shown;
using Headroom.Engineering.Years;

namespace Headroom.Desk.Shown;

/// <summary>The years of a design, every word and figure as it is shown.</summary>
/// <param name="Until">How many years.</param>
/// <param name="Said">What becomes short first, what tight, in paragraphs.</param>
/// <param name="Years">Today and the end of each year: when, worst verdict, counts, what was added.</param>
/// <param name="Turns">What becomes worse: by when, the entry, its verdict before and then, why, what is left.</param>
/// <param name="Dues">What is due: when, of what, what, how the day follows or what is to be asked.</param>
/// <param name="Rates">What changes in a year, and how fast.</param>
/// <param name="Assumed">What was assumed.</param>
public sealed record YearsModel(
    int Until,
    IReadOnlyList<string> Said,
    IReadOnlyList<(string When, string Worst, IReadOnlyList<int> Counts, string Added)> Years,
    IReadOnlyList<(string By, string Entry, bool Today, string Before, string After, string Why, string Left)> Turns,
    IReadOnlyList<(string When, string Subject, string What, string Told, bool Open)> Dues,
    IReadOnlyList<(string What, string Yearly, string Origin, bool Open)> Rates,
    IReadOnlyList<string> Assumed)
{
    /// <summary>The verdicts of the counts, in their order.</summary>
    public static IReadOnlyList<Verdict> Order { get; } = [Verdict.Short, Verdict.Tight, Verdict.Unknown, Verdict.Clear];

    /// <summary>Makes it of years that were worked out.</summary>
    /// <param name="result">The years.</param>
    /// <param name="now">The ledger of today.</param>
    public static YearsModel Of(YearsResult result, Ledger now)
    {
        var known = now.Entries.Select(entry => entry.Id).ToHashSet();
        return new(
            result.Years.Count - 1,
            YearWords.Paragraphs(result, "the ledger tells them"),
            [.. result.Years.Select(Year)],
            [.. result.Turns.Select(turn => (YearWords.Day(turn.On), turn.Entry.Id, known.Contains(turn.Entry.Id), turn.Before is { } before ? LedgerInWords.Word(before) : "new", LedgerInWords.Word(turn.Entry.Verdict), YearWords.Why(turn), Left(turn)))],
            [.. result.Dues.Select(due => (due.On is { } on ? YearWords.Day(on) : "no day yet", due.Subject, due.On < result.On ? $"overdue: {due.What}" : due.What, due.Question ?? due.Origin, due.Question is not null))],
            [.. result.Rates.Select(rate => (rate.What, rate.Yearly ?? rate.Question ?? "not known", rate.Origin, rate.Question is not null))],
            result.Assumed);
    }

    private static (string When, string Worst, IReadOnlyList<int> Counts, string Added) Year(YearState year)
    {
        var worst = year.Count(Verdict.Short) > 0 ? Verdict.Short : year.Count(Verdict.Tight) > 0 ? Verdict.Tight : Verdict.Clear;
        var port = year.WithoutPort > 0 ? $"; {year.WithoutPort} without a port" : "";
        return (year.Year == 0 ? "today" : $"year {year.Year}, {YearWords.Day(year.On)}", LedgerInWords.Word(worst), [.. Order.Select(year.Count)], YearWords.Added(year.Added) + port);
    }

    private static string Left(Turn turn)
    {
        var unit = ShownUnits.Metric.Of(turn.Entry.Unit);
        if (unit.Difference(turn.Entry.Left) is not { } left)
            return "unknown";
        if (unit.Difference(turn.LeftBefore) is not { } before)
            return Numbers.Show(left, unit.Between);
        var shown = Numbers.Together([before, left]);
        return $"{shown[0]} to {Numbers.WithUnit(shown[1], unit.Between)}";
    }
}

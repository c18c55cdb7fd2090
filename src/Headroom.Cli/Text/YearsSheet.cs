using System.Globalization;
using Headroom.Domain.Ledgers;
using Headroom.Engineering.Years;

namespace Headroom.Cli.Text;

/// <summary>The years on a sheet: what becomes short first, year by year, what turns, what is due, what is not known.</summary>
internal static class YearsSheet
{
    private const int Most = 12;
    private const int Count = 8;
    private static readonly Verdict[] Order = [Verdict.Short, Verdict.Tight, Verdict.Unknown, Verdict.Clear];

    /// <summary>Writes it.</summary>
    public static string Write(YearsResult result, ShownUnits units, Pen pen)
    {
        var page = new Page(pen);
        page.Paragraph($"{result.Job} · design {result.Design} · {YearWords.Day(result.On)} to {YearWords.Day(result.Years[^1].On)}");
        page.Gap();
        foreach (var paragraph in YearWords.Paragraphs(result, "'headroom study' tells them"))
            page.Paragraph(paragraph);
        WriteYears(page, result);
        WriteTurns(page, result, units);
        WriteDues(page, result);
        WriteRates(page, result);
        page.Gap();
        page.Line("Assumed");
        foreach (var assumed in result.Assumed)
            page.Paragraph(assumed, 2, 4);
        return page.ToString();
    }

    private static void WriteYears(Page page, YearsResult result)
    {
        page.Gap();
        page.Line($"  {Columns.Left("at the end of", 14)}{string.Concat(Order.Select(verdict => Columns.Right(Words.Of(verdict), Count)))}  added by then");
        foreach (var year in result.Years)
        {
            var label = year.Year == 0 ? "today" : $"year {year.Year}, {year.On.Year.ToString(CultureInfo.InvariantCulture)}";
            var worst = year.Count(Verdict.Short) > 0 ? Verdict.Short : year.Count(Verdict.Tight) > 0 ? Verdict.Tight : Verdict.Clear;
            var counts = string.Concat(Order.Select(verdict => Columns.Right(year.Count(verdict).ToString(CultureInfo.InvariantCulture), Count)));
            var port = year.WithoutPort > 0 ? $"; {year.WithoutPort} without a port" : "";
            page.Line(Columns.Fit($"{page.Pen.Ink(worst, page.Pen.Mark(worst))} {Columns.Left(label, 14)}{counts}  {page.Pen.Plain(YearWords.Added(year.Added) + port)}", Pen.Columns, page.Pen.Cut));
        }
    }

    private static void WriteTurns(Page page, YearsResult result, ShownUnits units)
    {
        foreach (var year in result.Years.Where(year => year.Turns.Count > 0))
        {
            page.Gap();
            page.Line($"Worse by {YearWords.Day(year.On)} ({year.Turns.Count})");
            foreach (var turn in year.Turns.OrderByDescending(turn => turn.Entry.Verdict).Take(Most))
                WriteTurn(page, turn, units);
            if (year.Turns.Count > Most)
                page.Line($"  {year.Turns.Count - Most} more (--format csv has all)");
        }
    }

    private static void WriteTurn(Page page, Turn turn, ShownUnits units)
    {
        var pen = page.Pen;
        var before = turn.Before is { } verdict ? pen.Mark(verdict) : " ";
        page.Edges($"  {before} {pen.Plain("→")} {pen.Mark(turn.Entry.Verdict)}  {turn.Entry.Id}  {YearWords.Why(turn)}", Left(turn, units));
    }

    private static string Left(Turn turn, ShownUnits units)
    {
        var unit = units.Of(turn.Entry.Unit);
        if (unit.Difference(turn.Entry.Left) is not { } left)
            return "unknown";
        if (unit.Difference(turn.LeftBefore) is not { } before)
            return $"{Numbers.Show(left, unit.Between)} left";
        var shown = Numbers.Together([before, left]);
        return $"{shown[0]} → {Numbers.WithUnit(shown[1], unit.Between)} left";
    }

    private static void WriteDues(Page page, YearsResult result)
    {
        page.Gap();
        page.Line("Due");
        if (result.Dues.Count == 0)
            page.Paragraph("nothing that is known", 2, 2);
        foreach (var alike in result.Dues.GroupBy(due => (due.On, due.What, Told: due.Question ?? due.Origin)))
        {
            var (on, what, told) = alike.Key;
            page.Labelled(
                on is { } day ? YearWords.Plain(day) : "?",
                $"{string.Join(", ", alike.Select(due => due.Subject))}: {(on < result.On ? "overdue: " : "")}{what}. {Words.Sentence(told)}", 2, 12);
        }
    }

    private static void WriteRates(Page page, YearsResult result)
    {
        page.Gap();
        page.Line("What changes in a year");
        foreach (var rate in result.Rates)
            page.Labelled(rate.What, rate.Question is { } question ? $"unknown: {question}" : $"{rate.Yearly} ({rate.Origin})", 2, Math.Min(24, result.Rates.Max(one => one.What.Length) + 2));
    }
}

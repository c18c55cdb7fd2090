using System.Globalization;
using Headroom.Desk.Work;
using Headroom.Documents.Canvas;
using Headroom.Documents.Drawings;
using Headroom.Domain.Ledgers;
using Headroom.Domain.Shown;

namespace Headroom.Desk.Shown;

/// <summary>A ledger ready for a page: every word and figure as it is shown.</summary>
/// <param name="Kept">What is kept with the revision.</param>
/// <param name="Lines">The rows with their bars.</param>
/// <param name="Figures">Figures without a limit: subject, what, value.</param>
/// <param name="Answers">Questions people ask: subject, question, answer.</param>
/// <param name="Cautions">What to take care of.</param>
/// <param name="Assumed">What was assumed.</param>
public sealed record LedgerModel(
    KeptLedger Kept,
    IReadOnlyList<LedgerLine> Lines,
    IReadOnlyList<(string Id, string Subject, string What, string Value)> Figures,
    IReadOnlyList<(string Subject, string Text)> Answers,
    IReadOnlyList<string> Cautions,
    IReadOnlyList<string> Assumed)
{
    private const double BarWidth = 210;
    private const double BarHeight = 15;

    /// <summary>Makes it of a study.</summary>
    internal static LedgerModel Of(StudiedDesign studied)
    {
        var ledger = studied.Ledger;
        var lines = ledger.Entries.Select(Line).ToList();
        var money = studied.Results.Money is { } offer && offer.Offer.Net > 0 ? $"{offer.Offer.Net.ToString("#,0", CultureInfo.InvariantCulture).Replace(',', ' ')} {offer.Currency}" : "";
        var kept = new KeptLedger(ledger.Job, ledger.Design, Day(ledger.On), [.. LedgerInWords.Paragraphs(ledger)], Counts(ledger), money, Next(ledger), [.. lines.Select(line => line.Row)]);
        return new(
            kept,
            lines,
            [.. ledger.Figures.Select(figure => (figure.Id, figure.Subject, figure.What, Value(figure)))],
            [.. ledger.Answers.Select(answer => (answer.Subject, $"{answer.Question} {LedgerInWords.Sentence(answer.Text)}"))],
            [.. ledger.Entries.SelectMany(entry => entry.Cautions).DistinctBy(caution => caution.Code).Select(Caution)],
            [.. ledger.Entries.SelectMany(entry => entry.Assumed).Distinct()]);
    }

    /// <summary>A caution in words.</summary>
    /// <param name="caution">The caution.</param>
    public static string Caution(Caution caution) => $"{caution.Code}  {LedgerInWords.Sentence(caution.Text)} {LedgerInWords.Sentence(caution.Who)}";

    /// <summary>A day as pages write it.</summary>
    /// <param name="day">The day.</param>
    public static string Day(DateOnly day) => day.ToString("d MMM yyyy", CultureInfo.InvariantCulture);

    /// <summary>The row of an entry.</summary>
    /// <param name="entry">The entry.</param>
    public static LedgerLine Line(LedgerEntry entry)
    {
        var (asked, there, left) = EntryInWords.Figures(entry, ShownUnits.Metric);
        var question = EntryInWords.Question(entry, ShownUnits.Metric);
        var row = new KeptRow(entry.Id, LedgerInWords.Word(entry.Verdict), entry.Subject, entry.What, asked, there, left, question);
        var line = new LedgerLine(row, ShownUnits.Metric.Of(entry.Unit).Symbol, [.. EntryInWords.Remarks(entry, ShownUnits.Metric)]);
        return question is null ? line.With(() => Bar(entry, row)) : line;
    }

    private static string Bar(LedgerEntry entry, KeptRow row) =>
        SvgCanvas.Write(new Picture($"asked {row.Asked}, there is {row.There}", BarWidth, BarHeight, (canvas, at) => EntryBar.Draw(canvas, entry, new Box(at.X + 1, at.Y, BarWidth - 2, BarHeight))));

    private static string Value(Figure figure)
    {
        var unit = ShownUnits.Metric.Of(figure.Unit);
        if (unit.Value(figure.Value) is not { } value)
            return figure.Question ?? "not known";
        return Numbers.WithUnit(unit.Value(figure.UpTo) is { } most ? string.Join("..", Numbers.Together([value, most])) : Numbers.Show(value), unit.Symbol);
    }

    private static string Counts(Ledger ledger) => $"{ledger.Entries.Count} {(ledger.Entries.Count == 1 ? "entry" : "entries")}: "
        + string.Join(", ", new[] { Verdict.Short, Verdict.Tight, Verdict.Clear, Verdict.Unknown }.Select(verdict => $"{ledger.Count(verdict)} {LedgerInWords.Word(verdict)}"));

    private static string Next(Ledger ledger)
    {
        var amiss = ledger.Entries.Where(entry => entry.Verdict is Verdict.Short or Verdict.Tight).ToList();
        if (amiss.SelectMany(entry => entry.Advice).FirstOrDefault() is { } advice)
            return LedgerInWords.Sentence(advice);
        if (ledger.Entries.FirstOrDefault(entry => entry is { Verdict: Verdict.Unknown, Question: not null }) is { } open)
            return $"Ask on site: {open.Subject}: {open.Question}";
        return amiss.Count > 0 ? "Look for remedies." : "Make the papers.";
    }
}

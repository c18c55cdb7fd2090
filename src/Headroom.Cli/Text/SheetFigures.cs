using Headroom.Domain.Ledgers;

namespace Headroom.Cli.Text;

/// <summary>What was worked out beside the limits: figures that others need, and answers to the questions people ask.</summary>
internal static class SheetFigures
{
    private const int Most = 8;
    private const int MostAnswers = 4;
    private const int WidestSubject = 14;
    private const int WidestValue = 9;
    private const int WidestWhat = 42;

    /// <summary>Writes figures and answers, as far as there are any.</summary>
    public static void Write(Page page, Ledger ledger, SheetRequest request)
    {
        WriteFigures(page, ledger.Figures, request);
        if (ledger.Answers.Count == 0)
            return;
        var shown = request.All ? ledger.Answers : Choose(ledger);
        page.Gap();
        page.Line("Questions people ask");
        var width = Math.Min(WidestSubject, shown.Max(answer => Columns.Of(page.Pen.Plain(answer.Subject))));
        foreach (var answer in shown)
            page.Labelled(Columns.Fit(answer.Subject, width, page.Pen.Cut), $"{answer.Question} {Words.Sentence(answer.Text)}", 2, width + 2);
        if (shown.Count < ledger.Answers.Count)
            page.Line($"  {ledger.Answers.Count - shown.Count} more (--all lists them)");
    }

    // What is asked about things that are short, tight or unknown comes before what is asked about the others.
    private static List<Answer> Choose(Ledger ledger)
    {
        var pressing = ledger.Entries.Where(entry => entry.Verdict != Verdict.Clear).Select(entry => entry.Subject).ToHashSet();
        return [.. ledger.Answers.OrderBy(answer => pressing.Contains(answer.Subject) ? 0 : 1).Take(MostAnswers)];
    }

    private static void WriteFigures(Page page, IReadOnlyList<Figure> figures, SheetRequest request)
    {
        if (figures.Count == 0)
            return;
        page.Gap();
        page.Line("Also worked out");
        var shown = request.All || figures.Count <= Most + 1 ? figures : [.. figures.Take(Most)];
        var subject = Cell(page.Pen, WidestSubject, [.. shown.Select(figure => figure.Subject)]);
        var what = Cell(page.Pen, WidestWhat, [.. shown.Select(figure => figure.What)]);
        foreach (var figure in shown)
            WriteFigure(page, $"{subject(figure.Subject)}  {what(figure.What)}", figure, request.Units.Of(figure.Unit));
        if (shown.Count < figures.Count)
            page.Line($"  {figures.Count - shown.Count} more (--all lists them)");
        foreach (var question in shown.Where(figure => figure.Value is null).Select(figure => figure.Question).OfType<string>().Distinct())
            page.Paragraph($"{page.Pen.Mark(Verdict.Unknown)} {question}", 2, 4);
    }

    /// <summary>A number, or a range as files write one.</summary>
    public static string Shown(double value, double? upTo) => upTo is { } most ? string.Join("..", Numbers.Together([value, most])) : Numbers.Show(value);

    // A column as wide as its widest text, up to so much.
    private static Func<string, string> Cell(Pen pen, int most, string[] texts)
    {
        var width = Math.Min(most, texts.Max(text => Columns.Of(pen.Plain(text))));
        return text => Columns.Left(Columns.Fit(pen.Plain(text), width, pen.Cut), width);
    }

    private static void WriteFigure(Page page, string name, Figure figure, ShownUnit unit)
    {
        var value = unit.Value(figure.Value) is { } number ? $"{Columns.Right(Shown(number, unit.Value(figure.UpTo)), WidestValue)} {page.Pen.Plain(unit.Symbol)}" : Columns.Right("unknown", WidestValue);
        page.Line(Columns.Fit($"  {name}{value}", Pen.Columns, page.Pen.Cut));
    }
}

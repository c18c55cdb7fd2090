using Headroom.Domain.Ledgers;

namespace Headroom.Cli.Text;

/// <summary>What was worked out beside the limits: figures that others need, and answers to the questions people ask.</summary>
internal static class SheetFigures
{
    private const int Most = 8;
    private const int WidestSubject = 14;
    private const int WidestWhat = 34;

    /// <summary>Writes figures and answers, as far as there are any.</summary>
    public static void Write(Page page, Ledger ledger, SheetRequest request)
    {
        WriteFigures(page, ledger.Figures, request);
        if (ledger.Answers.Count == 0)
            return;
        page.Gap();
        foreach (var answer in ledger.Answers)
            page.Paragraph($"{Words.Sentence(Asked(answer))} {Words.Sentence(answer.Text)}", 0, 2);
    }

    private static string Asked(Answer answer)
    {
        var question = answer.Question.TrimEnd();
        if (!question.Contains(answer.Subject, StringComparison.Ordinal))
            question = $"{answer.Subject}: {question}";
        return question.EndsWith('?') ? question : question + "?";
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
            WriteFigure(page, $"{subject(figure.Subject)}  {what(figure.What)}", figure, request.Units);
        if (shown.Count < figures.Count)
            page.Line($"  {figures.Count - shown.Count} more (--all lists them)");
    }

    // A column as wide as its widest text, up to so much.
    private static Func<string, string> Cell(Pen pen, int most, string[] texts)
    {
        var width = Math.Min(most, texts.Max(text => Columns.Of(pen.Plain(text))));
        return text => Columns.Left(Columns.Fit(pen.Plain(text), width, pen.Cut), width);
    }

    private static void WriteFigure(Page page, string name, Figure figure, ShownUnits units)
    {
        var unit = units.Of(figure.Unit);
        var text = unit.Value(figure.Value) is { } value
            ? Columns.Right(Numbers.Show(value), 8) + " " + page.Pen.Plain(unit.Symbol)
            : "  " + (figure.Question ?? "not known");
        if (figure.Value is not null)
            page.Line(Columns.Fit($"  {name}{text}", Pen.Columns, page.Pen.Cut));
        else
            page.Labelled(name, text.Trim(), 2, Columns.Of(name) + 2);
    }
}

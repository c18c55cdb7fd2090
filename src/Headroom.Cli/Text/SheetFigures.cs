using Headroom.Domain.Ledgers;

namespace Headroom.Cli.Text;

/// <summary>What was worked out beside the limits: figures that others need, and answers to the questions people ask.</summary>
internal static class SheetFigures
{
    private const int Most = 8;
    private const int WidestName = 46;

    /// <summary>Writes figures and answers, as far as there are any.</summary>
    public static void Write(Page page, Ledger ledger, SheetRequest request)
    {
        WriteFigures(page, ledger.Figures, request);
        if (ledger.Answers.Count == 0)
            return;
        page.Gap();
        foreach (var answer in ledger.Answers)
            page.Paragraph($"{Asked(answer)} {Words.Sentence(answer.Text)}", 0, 2);
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
        var names = shown.Select(figure => page.Pen.Plain($"{figure.Subject}  {figure.What}")).ToList();
        var width = Math.Min(WidestName, names.Max(Columns.Of));
        for (var i = 0; i < shown.Count; i++)
            WriteFigure(page, Columns.Left(Columns.Fit(names[i], width, page.Pen.Cut), width), shown[i], request.Units);
        if (shown.Count < figures.Count)
            page.Line($"  {figures.Count - shown.Count} more (--all lists them)");
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

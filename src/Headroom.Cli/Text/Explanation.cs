using Headroom.Domain.Ledgers;

namespace Headroom.Cli.Text;

/// <summary>One entry opened: its figures, the working behind them, up to where it holds, and what stands beside it.</summary>
internal static class Explanation
{
    /// <summary>The width of the labels at the left.</summary>
    public const int Label = 11;

    /// <summary>The indent of every line below the head.</summary>
    public const int Indent = 2;

    /// <summary>Writes several entries and figures under one title.</summary>
    public static string Write(Ledger ledger, ExplainRequest request, Pen pen)
    {
        var page = new Page(pen);
        Sheet.WriteTitle(page, ledger);
        foreach (var entry in ledger.Entries)
            WriteEntry(page, entry, request);
        foreach (var figure in ledger.Figures)
            WriteFigure(page, figure, request);
        return page.ToString();
    }

    private static void WriteEntry(Page page, LedgerEntry entry, ExplainRequest request)
    {
        page.Gap();
        WriteHead(page, entry, request.Units);
        page.Gap();
        ExplainedFigures.Write(page, entry, request.Units);
        WriteWorking(page, entry.Story.Work(entry), request);
        ExplainedAround.Write(page, entry, request.Units);
        WriteSource(page, entry.Story.Work(entry), request);
    }

    private static void WriteFigure(Page page, Figure figure, ExplainRequest request)
    {
        var unit = request.Units.Of(figure.Unit);
        var value = unit.Value(figure.Value) is { } number ? Numbers.WithUnit(SheetFigures.Shown(number, unit.Value(figure.UpTo)), unit.Symbol) : "unknown";
        page.Gap();
        page.Edges(figure.Id, value);
        page.Labelled("what", figure.What, Indent, Label);
        if (figure.Question is { } question)
            page.Labelled("ask", question, Indent, Label);
        var working = figure.Work();
        WriteWorking(page, working, request);
        WriteSource(page, working, request);
    }

    // The id is never cut: it is what a person copies. What it says goes below it when both do not fit.
    private static void WriteHead(Page page, LedgerEntry entry, ShownUnits units)
    {
        var verdict = Verdict(entry, units);
        var pen = page.Pen;
        var both = pen.Plain($"{entry.Id}    {entry.What}");
        if (Columns.Of(both) + 2 + Columns.Of(pen.Plain(verdict)) <= Pen.Columns)
        {
            page.Edges(both, verdict);
            return;
        }

        page.Paragraph(entry.Id);
        page.Paragraph($"{entry.What}: {verdict}", Indent, Indent);
    }

    private static string Verdict(LedgerEntry entry, ShownUnits units)
    {
        var left = ExplainedFigures.Left(entry, units.Of(entry.Unit));
        var said = (entry.Studied, left) switch
        {
            (Domain.Ledgers.Verdict.Short, not null) => $"short by {left}",
            (Domain.Ledgers.Verdict.Tight or Domain.Ledgers.Verdict.Clear, not null) => $"{Words.Of(entry.Studied)}, {left} left",
            _ => Words.Of(entry.Studied),
        };
        return entry.Overruled is null ? said : $"{said}; overruled";
    }

    private static void WriteWorking(Page page, Working working, ExplainRequest request)
    {
        page.Gap();
        foreach (var (line, index) in working.Formula.Split('\n', StringSplitOptions.RemoveEmptyEntries).Select((line, index) => (line, index)))
            page.Labelled(index == 0 ? "formula" : "", line, Indent, Label);
        ExplainedWorking.Write(page, working, request);
        if (request.Units.IsImperial)
            page.Labelled("", "The working is in metric units, as the formula holds in them.", Indent, Label);
    }

    private static void WriteSource(Page page, Working working, ExplainRequest request)
    {
        if (working.Source.Length > 0)
            page.Labelled("source", request.Shorten(working.Source), Indent, Label);
    }
}

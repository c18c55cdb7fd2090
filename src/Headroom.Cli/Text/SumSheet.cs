using Headroom.Engineering.Sums;

namespace Headroom.Cli.Text;

/// <summary>A sum that was worked out, as text: the answer in a sentence, the figures, then how it was worked out and from what.</summary>
internal static class SumSheet
{
    /// <summary>Writes it.</summary>
    public static string Write(AnsweredSum answered, ShownUnits units, Pen pen)
    {
        var page = new Page(pen);
        page.Paragraph(AnsweredSum.Tell(answered.Answer.Say, units));
        page.Gap();
        WriteFigures(page, answered.Answer.Figures, units);
        page.Gap();
        var working = answered.Working;
        foreach (var (line, index) in working.Formula.Split('\n').Select((line, index) => (line, index)))
            page.Labelled(index == 0 ? "formula" : "", line, Explanation.Indent, Explanation.Label);
        ExplainedWorking.Write(page, working, new ExplainRequest("", units));
        if (units.IsImperial)
            page.Labelled("", "The working is in metric units, as the formula holds in them.", Explanation.Indent, Explanation.Label);
        foreach (var (note, index) in answered.Answer.Notes.Select((note, index) => (note, index)))
            page.Labelled(index == 0 ? "note" : "", AnsweredSum.Tell(note, units), Explanation.Indent, Explanation.Label);
        foreach (var caution in answered.Answer.Cautions.DistinctBy(caution => caution.Code))
            page.Labelled("care", $"{caution.Code}  {Words.Sentence(caution.Text)} {Words.Sentence(caution.Who)}", Explanation.Indent, Explanation.Label);
        page.Labelled("source", working.Source, Explanation.Indent, Explanation.Label);
        return page.ToString();
    }

    private static void WriteFigures(Page page, IReadOnlyList<SumFigure> figures, ShownUnits units)
    {
        var pen = page.Pen;
        var rows = figures.Select(figure =>
        {
            var unit = units.Of(figure.Output.Unit);
            return (figure.Output.Name, Value: unit.Value(figure.Value) is { } value ? Numbers.Show(value) : "none", Unit: pen.Plain(figure.Value is null ? "" : unit.Symbol), figure.Output.What);
        }).ToList();
        var name = rows.Max(row => row.Name.Length) + 2;
        var value = rows.Max(row => row.Value.Length);
        var symbol = rows.Max(row => Columns.Of(row.Unit)) + 2;
        foreach (var row in rows)
            page.Labelled($"{Columns.Left(row.Name, name)}{Columns.Right(row.Value, value)} {row.Unit}", row.What, Explanation.Indent, name + value + 1 + symbol);
    }
}

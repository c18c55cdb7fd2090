using Headroom.Domain.Ledgers;

namespace Headroom.Cli.Text;

/// <summary>The figures of an entry, one a line, their numbers in one column.</summary>
internal static class ExplainedFigures
{
    /// <summary>Writes what is asked, what there is, the reserve and what is left, then the question that is open.</summary>
    public static void Write(Page page, LedgerEntry entry, ShownUnits units)
    {
        var unit = units.Of(entry.Unit);
        double?[] values =
        [
            unit.Value(entry.Demand), unit.Value(entry.Peak), unit.Value(entry.Limit), unit.Difference(entry.Reserve), unit.Difference(entry.Left),
        ];
        var shown = Numbers.Together(values);
        var width = shown.Max(text => text.Length);
        Line("asked", 0, unit.Symbol, Asked(entry));
        Line("at peak", 1, unit.Symbol, "");
        Line("there is", 2, unit.Symbol, "");
        Line("reserve", 3, unit.Between, "");
        Line("left", 4, unit.Between, Spread(entry, unit));
        if (entry.Question is { } question)
            page.Labelled("ask", question, Explanation.Indent, Explanation.Label);

        void Line(string label, int row, string symbol, string remark)
        {
            if (values[row] is not null)
                WriteLine(page, label, Columns.Right(shown[row], width) + " " + symbol, remark);
        }
    }

    private static string Asked(LedgerEntry entry) =>
        entry.Parts is { } parts && parts.Known < parts.All ? $"at least: {parts.Known} of {parts.All} known"
        : entry.Sense == Sense.AtLeast ? "needed at least"
        : "";

    private static string Spread(LedgerEntry entry, ShownUnit unit)
    {
        if (unit.Difference(entry.PlusMinus) is not { } half)
            return "";
        return $"± {Numbers.Show(half)} {unit.Between}" + (entry.MayBeShort ? ": may be short" : "");
    }

    private static void WriteLine(Page page, string label, string figure, string remark) =>
        page.Line(page.Pen.Plain(new string(' ', Explanation.Indent) + Columns.Left(label, Explanation.Label) + figure
            + (remark.Length == 0 ? "" : "  " + remark)));
}

using Headroom.Domain.Ledgers;

namespace Headroom.Cli.Text;

/// <summary>The figures of an entry, one a line, their numbers in one column.</summary>
internal static class ExplainedFigures
{
    /// <summary>Writes what is asked, what there is, the reserve and what is left, then the question that is open.</summary>
    public static void Write(Page page, LedgerEntry entry, ShownUnits units)
    {
        var unit = units.Of(entry.Unit);
        var shown = Shown(entry, unit);
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
            if (shown[row].Length > 0)
                WriteLine(page, label, Columns.Right(shown[row], width) + " " + symbol, remark);
        }
    }

    /// <summary>What is left as all figures of the entry are shown, without a sign; null when it is not known.</summary>
    public static string? Left(LedgerEntry entry, ShownUnit unit) =>
        entry.Left is null ? null : Numbers.WithUnit(Shown(entry, unit)[^1].TrimStart('-'), unit.Between);

    private static IReadOnlyList<string> Shown(LedgerEntry entry, ShownUnit unit) => Numbers.Together(
    [
        unit.Value(entry.Demand), unit.Value(entry.Peak), unit.Value(entry.Limit), unit.Difference(entry.Reserve), unit.Difference(entry.Left),
    ]);

    private static string Asked(LedgerEntry entry) =>
        entry.Parts is { } parts && parts.Known < parts.All ? $"at least: {parts.Known} of {parts.All} known"
        : entry.Sense == Sense.AtLeast ? "needed at least"
        : "";

    private static string Spread(LedgerEntry entry, ShownUnit unit)
    {
        if (entry.Parts is { } parts && parts.Known < parts.All)
            return "at most";
        if (unit.Difference(entry.PlusMinus) is not { } half)
            return "";
        return Numbers.Spread(half, unit.Between) + (entry.MayBeShort ? ": may be short" : "");
    }

    private static void WriteLine(Page page, string label, string figure, string remark) =>
        page.Line(page.Pen.Plain(new string(' ', Explanation.Indent) + Columns.Left(label, Explanation.Label) + figure
            + (remark.Length == 0 ? "" : "  " + remark)));
}

using Headroom.Documents.Canvas;
using Headroom.Documents.Drawings;
using Headroom.Documents.Layout;
using Headroom.Domain.Ledgers;
using Headroom.Domain.Shown;

namespace Headroom.Documents.Papers;

/// <summary>What is left of every limit: the first sentence, then every entry with its bar, worst first; of many that are clear the nearest of each kind.</summary>
internal static class LimitsPaper
{
    private const int MostRows = 34;
    private const double BarWidth = 120;
    private const double MarkWidth = 16;

    /// <summary>What stands on it.</summary>
    public static IReadOnlyList<Block> Blocks(PaperInput input)
    {
        var entries = input.Entries(inside: false);
        var shown = Shown(entries);
        var blocks = new List<Block>();
        blocks.AddRange(LedgerInWords.Paragraphs(input.Ledger with { Entries = entries }).Select(paragraph => new Words(paragraph)));
        blocks.Add(new Table(
            [
                new(""), new("what"), new("limit of"), new("what the need takes of it") { Least = BarWidth },
                new("asked", Anchor.End), new("there is", Anchor.End), new("left", Anchor.End),
            ],
            [.. shown.Select(entry => RowOf(entry, input.Units))]));
        blocks.Add(new Words(Count(entries, shown.Count), Lettering.Label));
        blocks.Add(new Words("Solid: what is asked. Hatched: what may come to it. Heavy stroke: the limit. Tick: where the wanted reserve begins. Circle: measured.", Lettering.Label));
        return blocks;
    }

    // All that is not clear; of what is clear, of every kind of limit the one with the least left of it.
    private static List<LedgerEntry> Shown(IReadOnlyList<LedgerEntry> entries)
    {
        var open = entries.Where(entry => entry.Verdict != Verdict.Clear).ToList();
        var clear = entries.Where(entry => entry.Verdict == Verdict.Clear).ToList();
        if (entries.Count > MostRows)
            clear = [.. clear.GroupBy(entry => entry.What).Select(group => group.MinBy(entry => entry.Left / entry.Limit ?? double.MaxValue)!)];
        return [.. open, .. clear];
    }

    private static string Count(IReadOnlyList<LedgerEntry> entries, int shown)
    {
        var counts = string.Join(", ", new[] { Verdict.Short, Verdict.Tight, Verdict.Clear, Verdict.Unknown }
            .Select(verdict => (Count: entries.Count(entry => entry.Verdict == verdict), Word: LedgerInWords.Word(verdict)))
            .Where(one => one.Count > 0).Select(one => $"{one.Count} {one.Word}"));
        var rest = shown < entries.Count ? $" {shown} of them stand here: all that are not clear, and of each kind of limit the one with the least left. The calculation book has all." : "";
        return $"{entries.Count} limits: {counts}.{rest}";
    }

    private static Row RowOf(LedgerEntry entry, ShownUnits units)
    {
        var mark = new Cell("") { Draw = (canvas, box) => VerdictMark.Draw(canvas, entry.Verdict, box.Middle, 6) };
        if (entry.Verdict == Verdict.Unknown && entry.Question is { } question)
            return new Row([mark, new(entry.Subject), new(entry.What), new(question, Lettering.Cell with { Face = Face.Slanted }) { Span = 4 }]) { Least = MarkWidth };
        var unit = units.Of(entry.Unit);
        var figures = Numbers.Together([unit.Value(entry.Demand), unit.Value(entry.Limit), unit.Difference(entry.Left)]);
        var least = entry.Parts is not null ? "at least " : "";
        var strong = entry.Verdict is Verdict.Short ? Lettering.Cell with { Face = Face.Strong, Ink = Ink.Rust } : Lettering.Cell with { Face = Face.Strong };
        return new Row(
        [
            mark, new(entry.Subject), new(entry.What), new("") { Draw = (canvas, box) => EntryBar.Draw(canvas, entry, box) },
            new(least + figures[0]), new(figures[1]), new(Numbers.WithUnit(figures[2], unit.Between), strong),
        ]) { Least = MarkWidth };
    }
}

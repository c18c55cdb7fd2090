using Headroom.Documents.Canvas;
using Headroom.Documents.Drawings;
using Headroom.Documents.Layout;
using Headroom.Domain.Ledgers;
using Headroom.Domain.Shown;

namespace Headroom.Documents.Papers;

/// <summary>Entries of the ledger as papers list them, each with its bar.</summary>
internal static class EntryTable
{
    private const double BarWidth = 120;
    private const double Height = 14;

    /// <summary>What the parts of a bar mean.</summary>
    public static Words Legend => new("Solid: what is asked. Hatched: what may come to it. Heavy stroke: the limit. Tick: where the wanted reserve begins. Circle: measured.", Lettering.Label);

    /// <summary>The table of some entries, in their order.</summary>
    /// <param name="entries">The entries.</param>
    /// <param name="units">The units in which figures are shown.</param>
    public static Table Of(IEnumerable<LedgerEntry> entries, ShownUnits units) => Of(entries.Select(entry => (entry, entry.Subject)), units);

    /// <summary>The table of some entries, each with the words for what it is about.</summary>
    /// <param name="entries">The entries.</param>
    /// <param name="units">The units in which figures are shown.</param>
    public static Table Of(IEnumerable<(LedgerEntry Entry, string Subject)> entries, ShownUnits units) => new(
        [
            new(""), new("what"), new("limit of") { Grows = true }, new("what the need takes of it") { Least = BarWidth },
            new("asked", Anchor.End), new("there is", Anchor.End), new("left", Anchor.End),
        ],
        [.. entries.Select(one => RowOf(one.Entry, one.Subject, units))]);

    /// <summary>The bar of one entry by itself; null when demand or limit is not known.</summary>
    /// <param name="entry">The entry.</param>
    public static Picture? Bar(LedgerEntry entry) => EntryBar.Shows(entry)
        ? new Picture($"{entry.Subject}, {entry.What}: what the need takes of the limit", 2 * BarWidth, Height, (canvas, at) => EntryBar.Draw(canvas, entry, new Box(at.X, at.Y, 2 * BarWidth, Height)))
        : null;

    private static Row RowOf(LedgerEntry entry, string subject, ShownUnits units)
    {
        var mark = new Cell("") { Draw = (canvas, box) => VerdictMark.Draw(canvas, entry.Verdict, new(box.Middle.X, box.Y + Math.Min(box.Height, Height) / 2), 6) };
        if (entry.Verdict == Verdict.Unknown && entry.Question is { } question)
            return new Row([mark, new(subject), new(entry.What), new(Written.Asked(question), Lettering.Cell with { Face = Face.Slanted }) { Span = 4 }]) { Least = Height };
        var unit = units.Of(entry.Unit);
        var figures = Numbers.Together([unit.Value(entry.Demand), unit.Value(entry.Limit), unit.Difference(entry.Left)]);
        var least = entry.Parts is not null ? "at least " : "";
        var strong = entry.Verdict is Verdict.Short ? Lettering.Cell with { Face = Face.Strong, Ink = Ink.Rust } : Lettering.Cell with { Face = Face.Strong };
        return new Row(
        [
            mark, new(subject), new(entry.What), new("") { Draw = (canvas, box) => EntryBar.Draw(canvas, entry, box) },
            new(least + figures[0]), new(figures[1]), new(Numbers.WithUnit(figures[2], unit.Between), strong),
        ]) { Least = Height };
    }
}

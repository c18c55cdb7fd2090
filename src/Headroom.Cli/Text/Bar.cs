using Headroom.Domain.Ledgers;

namespace Headroom.Cli.Text;

/// <summary>Draws an entry on one line: from its floor, which is zero for most, to the limit, which stands at the same cell in every bar of a table, and beyond it.</summary>
/// <param name="pen">What it is drawn with.</param>
/// <param name="width">All cells.</param>
/// <param name="beyond">How many of them lie beyond the limit.</param>
internal sealed class Bar(Pen pen, int width, int beyond)
{
    private readonly int _limit = width - 1 - beyond;

    /// <summary>The greatest share of the limit that anything of an entry comes to: 1 for an entry that reaches no further.</summary>
    public static double Reach(LedgerEntry entry) =>
        Above(entry, entry.Limit) is > 0 and var limit ? Math.Max(1, Math.Max(Furthest(entry), Readings(entry).DefaultIfEmpty().Max()) / limit) : 1;

    /// <summary>The bar of an entry; blank when demand or limit is not known or the limit is nothing.</summary>
    public string Draw(LedgerEntry entry)
    {
        if (Above(entry, entry.Demand) is not { } demand || Above(entry, entry.Limit) is not (> 0 and var limit))
            return new string(' ', width);
        var cells = new char[width];
        var asked = Cell(demand, limit);
        var peak = Math.Max(asked, Cell(Above(entry, entry.Peak) ?? 0, limit));
        for (var cell = 0; cell < width; cell++)
            cells[cell] = Sign(cell, asked, peak);
        DrawReserve(cells, entry, (asked, limit));
        DrawEnd(cells, entry, limit);
        DrawMeasured(cells, entry, limit);
        return new string(cells);
    }

    // How many cells a value fills. What is inside the limit stays before its cell, what is beyond fills at least one behind it.
    private int Cell(double value, double limit)
    {
        var cells = (int)Math.Round(Math.Clamp(value / limit, 0, 1000) * _limit, MidpointRounding.AwayFromZero);
        if (value <= limit)
            return Math.Clamp(cells, value > 0 ? 1 : 0, _limit);
        return Math.Clamp(cells + 1, _limit + 2, Math.Max(width, _limit + 2));
    }

    private char Sign(int cell, int asked, int peak) =>
        cell == _limit ? pen.Bar.Limit
        : cell < asked ? cell < _limit ? pen.Bar.Asked : pen.Bar.Beyond
        : cell < peak ? pen.Bar.Peak
        : cell < _limit ? pen.Bar.Free : ' ';

    // Rounding must not move the tick to the other side of what is asked: the verdict says on which side it lies.
    private void DrawReserve(char[] cells, LedgerEntry entry, (int Asked, double Limit) at)
    {
        if (entry.Reserve is not > 0 || entry.Studied == Verdict.Short)
            return;
        var tick = (int)Math.Round((1 - entry.Reserve.Value / at.Limit) * _limit);
        tick = entry.Studied == Verdict.Tight ? Math.Min(tick, at.Asked - 2) : Math.Max(tick, at.Asked);
        if (tick >= 0 && tick < _limit)
            cells[tick] = pen.Bar.Reserve;
    }

    private void DrawEnd(char[] cells, LedgerEntry entry, double limit)
    {
        var scale = (double)(width - 1) / Math.Max(1, _limit);
        if (beyond > 0 && Furthest(entry) / limit > scale * 1.1)
            cells[^1] = pen.Bar.Broken;
    }

    private void DrawMeasured(char[] cells, LedgerEntry entry, double limit)
    {
        foreach (var reading in Readings(entry))
        {
            var cell = Math.Clamp(Cell(reading, limit) - 1, 0, width - 1);
            if (cell != _limit)
                cells[cell] = pen.Bar.Measured;
        }
    }

    private static double Furthest(LedgerEntry entry) => Math.Max(Above(entry, entry.Demand) ?? 0, Above(entry, entry.Peak) ?? 0);

    // In units in which zero means nothing a bar from zero would say nothing either.
    private static double? Above(LedgerEntry entry, double? value) => value - (entry.Floor ?? 0);

    private static IEnumerable<double> Readings(LedgerEntry entry) =>
        entry.Measured.Select(comparison => comparison.Reading).Where(reading => reading.Unit == entry.Unit).Select(reading => reading.Value - (entry.Floor ?? 0));
}

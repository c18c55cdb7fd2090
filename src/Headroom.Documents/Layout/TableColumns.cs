using Headroom.Documents.Canvas;
using Headroom.Documents.Letters;

namespace Headroom.Documents.Layout;

/// <summary>How wide the columns of a table are.</summary>
internal static class TableColumns
{
    /// <summary>Room left and right of what stands in a cell [pt].</summary>
    public const double Padding = 3;

    /// <summary>The widths of the columns.</summary>
    /// <param name="table">The table.</param>
    /// <param name="room">How wide it may be [pt].</param>
    public static double[] Widths(Table table, double room)
    {
        var count = table.Columns.Count;
        var least = new double[count];
        var wanted = new double[count];
        for (var c = 0; c < count; c++)
            (least[c], wanted[c]) = Needs(table, c);
        if (wanted.Sum() <= room)
            return Grown(table, wanted, room - wanted.Sum());
        var kept = (double[])[.. least.Select((width, c) => wanted[c] <= Narrow ? wanted[c] : width)];
        least = kept.Sum() <= room * MostKept ? kept : least;
        var spare = room - least.Sum();
        if (spare <= 0)
            return [.. least.Select(width => width * room / least.Sum())];
        // Each gets its longest word; the rest goes to those that would like more, by how much they would like.
        var open = wanted.Sum() - least.Sum();
        return [.. least.Select((width, c) => width + spare * (wanted[c] - least[c]) / open)];
    }

    private static double[] Grown(Table table, double[] wanted, double spare)
    {
        var growing = table.Columns.Count(column => column.Grows);
        if (growing == 0)
            return wanted;
        // What is filled by hand gets its share: half of the room left over, by how much it asked for.
        var byHand = table.Columns.Select((column, c) => IsByHand(table, c) ? column.Least!.Value : 0).ToList();
        var forHand = byHand.Sum() > 0 ? spare * HandShare : 0;
        return [.. wanted.Select((width, c) => width + (table.Columns[c].Grows ? (spare - forHand) / growing : 0) + (forHand > 0 ? forHand * byHand[c] / byHand.Sum() : 0))];
    }

    private static bool IsByHand(Table table, int column) => table.Columns[column].Least is not null
        && table.Rows.All(row => row.IsTitle || CellAt(row, column) is null or { Text.Length: 0, Draw: null });

    private static (double Least, double Wanted) Needs(Table table, int column)
    {
        var head = table.Columns[column];
        var least = Math.Max(head.Least ?? 0, TextWrap.LongestWord(head.Title, Lettering.Label) + 2 * Padding);
        var wanted = Math.Max(least, Typeface.Width(head.Title, Lettering.Label) + 2 * Padding);
        foreach (var row in table.Rows)
        {
            if (row.IsTitle || CellAt(row, column) is not { Span: 1, Draw: null } cell)
                continue;
            var lettering = cell.Lettering ?? (row.IsSum ? Lettering.Cell with { Face = Face.Strong } : Lettering.Cell);
            least = Math.Max(least, TextWrap.LongestWord(cell.Text, lettering) + 2 * Padding);
            wanted = Math.Max(wanted, cell.Text.Split('\n').Max(line => Typeface.Width(line, lettering)) + 2 * Padding);
        }

        return (Math.Min(least, MostLeast), wanted);
    }

    // The cell that begins in a column; a cell before it may reach over several.
    private static Cell? CellAt(Row row, int column)
    {
        var at = 0;
        foreach (var cell in row.Cells)
        {
            if (at >= column)
                return at == column ? cell : null;
            at += cell.Span;
        }

        return null;
    }

    private const double HandShare = 0.5;

    // A name or figure of a few words is not worth breaking as long as there is room for the rest.
    private const double Narrow = 80;
    private const double MostKept = 0.8;

    // A word longer than this, such as an address of a page, is broken.
    private const double MostLeast = 150;
}

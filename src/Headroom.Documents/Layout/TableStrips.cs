using Headroom.Documents.Canvas;

namespace Headroom.Documents.Layout;

/// <summary>Makes the strips of a table.</summary>
internal sealed class TableStrips
{
    private const double Above = 2.5;
    private const double Below = 3;
    private const int MostLines = 40;
    private const int FewRows = 3;

    private readonly Table _table;
    private readonly double _left;
    private readonly double[] _widths;
    private readonly Strip _head;

    /// <summary>Prepares a table.</summary>
    public TableStrips(Table table, Box body)
    {
        _table = table;
        _left = body.X;
        _widths = TableColumns.Widths(table, body.Width);
        _head = Head();
    }

    /// <summary>The strips of the table, head first.</summary>
    public IEnumerable<Strip> All()
    {
        yield return _head with { StaysWithNext = true };
        for (var i = 0; i < _table.Rows.Count; i++)
        {
            // Sums stand together with what they are of, the tax between two of them too.
            var sums = _table.Rows.Skip(i + 1).Take(2).Any(row => row.IsSum);
            // Neither the first row nor the last ones stand alone on a sheet.
            var few = _table.Rows.Count >= FewRows && (i == 0 || (i >= _table.Rows.Count - FewRows && i < _table.Rows.Count - 1));
            foreach (var strip in StripsOf(_table.Rows[i]))
                yield return strip with { Head = _head, StaysWithNext = _table.Rows[i].IsTitle || sums || few };
        }
    }

    private Strip Head()
    {
        var lettering = Lettering.Label;
        var titles = _table.Columns.Select((column, c) => TextWrap.Lines(column.Title, lettering, _widths[c] - 2 * TableColumns.Padding)).ToList();
        var lines = titles.Max(title => title.Count);
        var height = lines * lettering.Lead + Above + Below;
        return new Strip(height, (top, items) =>
        {
            for (var c = 0; c < titles.Count; c++)
                Write(titles[c], (c, 1), top + (lines - titles[c].Count) * lettering.Lead, items, lettering);
            Rule(top + height, new Stroke(Ink.Ink, 0.8), items);
        });
    }

    // A row of more lines than any sheet holds goes on in a row below it.
    private IEnumerable<Strip> StripsOf(Row row)
    {
        var cells = Wrapped(row);
        var most = Math.Max(1, cells.Max(cell => cell.Lines.Count));
        for (var from = 0; from < most; from += MostLines)
        {
            var (first, count) = (from, Math.Min(MostLines, most - from));
            yield return One(row, [.. cells.Select(cell => cell with { Lines = [.. cell.Lines.Skip(first).Take(count)] })], count);
        }
    }

    private Strip One(Row row, List<WrappedCell> cells, int lines)
    {
        var lead = cells.Max(cell => cell.Lettering.Lead);
        var height = Math.Max(row.Least ?? 0, lines * lead + Above + Below);
        return new Strip(height, (top, items) =>
        {
            if (row.IsSum)
                Rule(top, Stroke.Thin, items);
            foreach (var cell in cells)
            {
                if (cell.Cell.Draw is { } draw)
                    Draw(draw, (cell.Column, cell.Cell.Span), (top, height), items);
                else
                    Write(cell.Lines, (cell.Column, cell.Cell.Span), top, items, cell.Lettering);
            }

            Rule(top + height, Stroke.Hairline, items);
        });
    }

    private List<WrappedCell> Wrapped(Row row)
    {
        var cells = new List<WrappedCell>();
        var column = 0;
        foreach (var cell in row.Cells)
        {
            var lettering = cell.Lettering ?? (row.IsSum || row.IsTitle ? Lettering.Cell with { Face = Face.Strong } : Lettering.Cell);
            var span = row.IsTitle && row.Cells.Count == 1 ? _widths.Length : Math.Min(cell.Span, _widths.Length - column);
            cells.Add(new(cell with { Span = span }, column, lettering, cell.Draw is null ? TextWrap.Lines(cell.Text, lettering, Width(column, span) - 2 * TableColumns.Padding) : []));
            column += span;
        }

        return cells;
    }

    private void Write(List<string> lines, (int Column, int Span) at, double top, List<Placed> items, Lettering lettering)
    {
        var anchor = _table.Columns[at.Column].Anchor;
        var left = _left + _widths[..at.Column].Sum() + TableColumns.Padding;
        var width = Width(at.Column, at.Span) - 2 * TableColumns.Padding;
        var x = anchor == Anchor.Start ? left : anchor == Anchor.End ? left + width : left + width / 2;
        for (var i = 0; i < lines.Count; i++)
        {
            var (line, baseline) = (lines[i], top + Above + i * lettering.Lead + lettering.Size);
            if (line.Length > 0)
                items.Add(new(new(left, top + Above + i * lettering.Lead, width, lettering.Lead), line, canvas => canvas.Text(line, new(x, baseline), lettering with { Anchor = anchor })));
        }
    }

    private void Draw(Action<ICanvas, Box> draw, (int Column, int Span) at, (double Top, double Height) room, List<Placed> items)
    {
        var box = new Box(_left + _widths[..at.Column].Sum() + TableColumns.Padding, room.Top + 1, Width(at.Column, at.Span) - 2 * TableColumns.Padding, room.Height - 2);
        items.Add(new(box, "", canvas => draw(canvas, box)));
    }

    private void Rule(double y, Stroke stroke, List<Placed> items)
    {
        var right = _left + _widths.Sum();
        items.Add(new(new(_left, y, right - _left, 0), "", canvas => canvas.Line(new(_left, y), new(right, y), stroke)));
    }

    private double Width(int column, int span) => _widths[column..(column + span)].Sum();

    private sealed record WrappedCell(Cell Cell, int Column, Lettering Lettering, List<string> Lines);
}

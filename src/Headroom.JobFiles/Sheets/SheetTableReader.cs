using Headroom.Domain.Findings;
using Headroom.JobFiles.Files;
using nietras.SeparatedValues;

namespace Headroom.JobFiles.Sheets;

/// <summary>Cuts the text of a sheet into cells that know their place.</summary>
internal sealed class SheetTableReader(string text, string file, SheetSlips slips)
{
    /// <summary>The most columns: the widest sheets people keep have a few dozen.</summary>
    public const int MostColumns = 200;

    /// <summary>The most rows: ten times the largest job we could think of.</summary>
    public const int MostRows = 20_000;

    /// <summary>The most lines, empty ones among them: some programs save them by the ten thousand.</summary>
    public const int MostLines = 100_000;

    /// <summary>The longest cell: more is no name, number or remark.</summary>
    public const int LongestCell = 2000;

    private readonly LineWalk _walk = new(text, new Place(file, 1, 1));
    private readonly List<SheetRow> _rows = [];
    private SheetRow? _header;

    /// <summary>The table; null, with findings, when there is none.</summary>
    /// <param name="separator">What stands between cells.</param>
    /// <param name="from">The index at which the line of headings is looked for.</param>
    /// <param name="mayBeEmpty">Whether headings alone are a table too.</param>
    public SheetTable? Read(char separator, int from, bool mayBeEmpty = false)
    {
        using var reader = Sep.New(separator)
            .Reader(options => options with { HasHeader = false, Unescape = false, DisableColCountCheck = true, DisableQuotesParsing = false })
            .FromText(text[from..]);
        var at = from;
        for (var number = text.AsSpan(0, from).Count('\n') + 1; reader.MoveNext(); number++)
        {
            var row = reader.Current;
            if (!Add(row, at, number))
                return null;
            at = Next(at + row.Span.Length);
        }

        if (_header is not null && (mayBeEmpty || _rows.Count > 0))
            return new SheetTable(_header.Cells, _rows);
        slips.Refuse(SheetCodes.NoHeader, new Place(file, 0, 0), (_header is null ? "a sheet in which nothing stands" : "a sheet with one line", "a line with the words that name the columns, and rows below it", "see whether it is the right sheet"));
        return null;
    }

    private bool Add(SepReader.Row row, int at, int number)
    {
        if (row.ColCount > MostColumns || _rows.Count >= MostRows || number > MostLines)
        {
            var given = row.ColCount > MostColumns ? $"a row of {row.ColCount} cells" : $"more than {(number > MostLines ? MostLines : MostRows)} rows";
            slips.Refuse(SheetCodes.TooLarge, _walk.To(at), (given, $"at most {MostColumns} columns and {MostRows} rows", "see whether it is the right sheet, and what stands between its cells"));
            return false;
        }

        var cells = new List<SheetCell>(row.ColCount);
        for (var column = 0; column < row.ColCount; column++)
        {
            var raw = row[column].Span;
            if (Cell(raw, SheetCell.Letters(column) + number, _walk.To(at)) is not { } cell)
                return false;
            cells.Add(cell);
            at += raw.Length + 1;
        }

        var read = new SheetRow(cells[0].At, number, cells);
        if (read.IsEmpty)
            return true;
        if (_header is null)
            _header = read;
        else
            _rows.Add(read);
        return true;
    }

    private SheetCell? Cell(ReadOnlySpan<char> raw, string name, Place at)
    {
        if (raw.Length > LongestCell && !raw.StartsWith("\""))
            return TooLong(at, name, raw.Length);
        var cell = raw.Trim(' ');
        if (!cell.Contains('"'))
            return new SheetCell(Plain(cell), at, name);
        if (Inner(cell) is not { } inner)
            return Slip(at, name, cell);
        return inner.Length > LongestCell ? TooLong(at, name, inner.Length) : new SheetCell(Plain(inner), at, name);
    }

    // An apostrophe in front is the spreadsheet's own mark for "this is text".
    private static string Plain(ReadOnlySpan<char> cell)
    {
        var text = cell.Trim();
        return (text.Length > 1 && text[0] == '\'' ? text[1..] : text).ToString();
    }

    // What stands between quotation marks, two of them for one; null when they do not stand at both ends.
    private static string? Inner(ReadOnlySpan<char> cell)
    {
        if (cell.Length < 2 || cell[0] != '"' || cell[^1] != '"')
            return null;
        var inner = cell[1..^1];
        var single = inner.ToString().Replace("\"\"", "", StringComparison.Ordinal);
        return single.Contains('"') ? null : inner.ToString().Replace("\"\"", "\"", StringComparison.Ordinal);
    }

    private SheetCell? Slip(Place at, string name, ReadOnlySpan<char> cell)
    {
        slips.Refuse(
            SheetCodes.Quote,
            at,
            ($"{name} holds a quotation mark that is not closed, or not at its ends: {Words.Short(cell[..Math.Min(cell.Length, 40)].ToString())}", "quotation marks around a whole cell, two of them for one inside", "correct the mark; all that follows was taken as one cell"));
        return null;
    }

    private SheetCell? TooLong(Place at, string name, int length)
    {
        slips.Refuse(SheetCodes.TooLarge, at, ($"{name} holds {length} characters", $"at most {LongestCell}", "see whether a quotation mark is never closed, or it is the right sheet"));
        return null;
    }

    private int Next(int end) =>
        end + 1 < text.Length && text[end] == '\r' && text[end + 1] == '\n' ? end + 2 : end + 1;
}

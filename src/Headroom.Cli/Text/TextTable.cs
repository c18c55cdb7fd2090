namespace Headroom.Cli.Text;

/// <summary>Rows of a few columns, each as wide as its widest cell; the first is text, the others figures at their right edge unless said otherwise.</summary>
internal sealed class TextTable(params string[] heads)
{
    private const int Indent = 2;
    private const int Between = 2;
    private readonly List<string[]> _rows = [];

    /// <summary>How many of the last columns are text.</summary>
    public int TextAtEnd { get; init; }

    /// <summary>How wide the first column is at most.</summary>
    public int WidestFirst { get; init; } = 24;

    /// <summary>Adds a row; a cell for each column.</summary>
    public void Add(params string[] cells) => _rows.Add(cells);

    /// <summary>Writes the heads, then the rows.</summary>
    public void Write(Page page)
    {
        var pen = page.Pen;
        var all = _rows.Prepend(heads).Select(row => row.Select((cell, at) => at == 0 ? Columns.FitMiddle(pen.Plain(cell), WidestFirst, pen.Cut, " ") : pen.Plain(cell)).ToArray()).ToList();
        var widths = heads.Select((_, at) => all.Max(row => Columns.Of(row[at]))).ToArray();
        foreach (var row in all)
        {
            var cells = row.Select((cell, at) => at == 0 || at >= heads.Length - TextAtEnd ? Columns.Left(cell, widths[at]) : Columns.Right(cell, widths[at]));
            page.Line(Columns.Fit(new string(' ', Indent) + string.Join(new string(' ', Between), cells).TrimEnd(), Pen.Columns, pen.Cut));
        }
    }
}

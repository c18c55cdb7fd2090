namespace Headroom.Cli.Text;

/// <summary>How wide each column of the table is, so that a row takes the page and no more: names give way to figures, and the bar takes what is over.</summary>
internal sealed class SheetLayout
{
    private const string AskedHead = "asked";
    private const string ThereHead = "there is";
    private const string LeftHead = "left";
    private const int Gap = 2;
    private const int LeastBar = 12;
    private const int MostBar = 24;
    private const int LeastSubject = 7;

    private readonly Pen _pen;
    private readonly Bar _bar;
    private readonly int _subject;
    private readonly int _what;
    private readonly int _asked;
    private readonly int _there;
    private readonly int _left;

    /// <summary>Lays out a table for its rows.</summary>
    public SheetLayout(IReadOnlyList<SheetRow> rows, Pen pen)
    {
        _pen = pen;
        _asked = Widest(rows, row => row.Asked, AskedHead.Length);
        _there = Widest(rows, row => row.There, ThereHead.Length);
        _left = Widest(rows, row => row.Asks ? "" : row.Left, LeftHead.Length);
        var room = Pen.Columns - Gap - (5 * Gap) - _asked - _there - _left;
        _subject = Math.Clamp(Widest(rows, row => row.Subject, 4), LeastSubject, Math.Max(LeastSubject, room / 4));
        var what = Widest(rows, row => row.What, "limit of".Length);
        var bar = Math.Clamp(room - _subject - what, LeastBar, MostBar);
        _what = Math.Max(1, Math.Min(what, room - _subject - bar));
        _bar = new Bar(pen, bar, BeyondCells(rows, bar));
        Indent = Gap + _subject + Gap + _what + Gap;
    }

    /// <summary>The column at which the bar begins, or what stands in its place.</summary>
    public int Indent { get; }

    /// <summary>How wide what stands in the place of bar and figures may be.</summary>
    public int Room => Pen.Columns - Indent;

    /// <summary>The heads of the columns.</summary>
    public string Head() => Cells("  ", "what", "limit of") + Columns.Left("", Pen.Columns - Indent - FiguresWidth)
        + Figures(AskedHead, ThereHead, LeftHead);

    /// <summary>Mark, subject and what of a row, up to the bar.</summary>
    public string Name(SheetRow row) => Cells(_pen.Ink(row.Entry.Verdict, _pen.Mark(row.Entry.Verdict)) + " ", row.Subject, row.What);

    /// <summary>A row with its bar and figures.</summary>
    public string Figures(SheetRow row)
    {
        var bar = Columns.Left(_bar.Draw(row.Entry), Pen.Columns - Indent - FiguresWidth);
        var left = new string(' ', _left - Columns.Of(row.Left)) + _pen.Ink(row.Entry.Verdict, row.Left);
        return Name(row) + bar + Figures(row.Asked, row.There, "") + left;
    }

    private int FiguresWidth => Gap + _asked + Gap + _there + Gap + _left;

    private string Figures(string asked, string there, string left) =>
        new string(' ', Gap) + Columns.Right(asked, _asked) + new string(' ', Gap) + Columns.Right(there, _there) + new string(' ', Gap)
        + (left.Length == 0 ? "" : Columns.Right(left, _left));

    private string Cells(string mark, string subject, string what) =>
        mark + Columns.Left(Columns.FitMiddle(subject, _subject, _pen.Cut, "-"), _subject + Gap)
        + Columns.Left(Columns.FitMiddle(what, _what, _pen.Cut, ", "), _what + Gap);

    private static int Widest(IReadOnlyList<SheetRow> rows, Func<SheetRow, string> text, int least) =>
        rows.Count == 0 ? least : Math.Max(least, rows.Max(row => Columns.Of(text(row))));

    // Room beyond the limit is kept only when something lies there: enough for a fifth over, and at most three cells.
    private static int BeyondCells(IReadOnlyList<SheetRow> rows, int bar)
    {
        var reach = rows.Where(row => !row.Asks).Select(row => Bar.Reach(row.Entry)).DefaultIfEmpty(1).Max();
        return reach <= 1 ? 0 : Math.Clamp((int)Math.Ceiling((reach - 1) * (bar - 1)), 1, Math.Max(2, bar / 5));
    }
}

using System.Text;

namespace Headroom.Cli.Text;

/// <summary>A text being written, line by line; no line is wider than the page.</summary>
internal sealed class Page(Pen pen)
{
    private readonly StringBuilder _text = new();
    private bool _blank = true;

    /// <summary>What the page is written with.</summary>
    public Pen Pen => pen;

    /// <summary>Writes one line that is already laid out.</summary>
    public void Line(string line)
    {
        _text.Append(line.TrimEnd()).Append('\n');
        _blank = false;
    }

    /// <summary>Leaves one line free; never two, and none at the top.</summary>
    public void Gap()
    {
        if (!_blank)
            _text.Append('\n');
        _blank = true;
    }

    /// <summary>Writes running text: the first line at one indent, the others at another.</summary>
    public void Paragraph(string text, int indent = 0, int hanging = 0)
    {
        var first = true;
        foreach (var line in Wrap.Lines(pen.Plain(text), Pen.Columns - Math.Max(indent, hanging)))
        {
            Line(new string(' ', first ? indent : hanging) + line);
            first = false;
        }
    }

    /// <summary>Writes running text beside a label that stands once, in the first line.</summary>
    public void Labelled(string label, string text, int indent, int width)
    {
        var lines = Wrap.Lines(pen.Plain(text), Pen.Columns - indent - width);
        for (var i = 0; i < lines.Count; i++)
            Line(new string(' ', indent) + Columns.Left(i == 0 ? pen.Plain(label) : "", width) + lines[i]);
    }

    /// <summary>Writes text at the left and at the right edge of one line; the left is cut when both do not fit.</summary>
    public void Edges(string left, string right)
    {
        right = pen.Plain(right);
        var room = Pen.Columns - Columns.Of(right) - 2;
        Line(Columns.Left(Columns.Fit(pen.Plain(left), room, pen.Cut), room) + "  " + right);
    }

    /// <inheritdoc/>
    public override string ToString() => _text.ToString();
}

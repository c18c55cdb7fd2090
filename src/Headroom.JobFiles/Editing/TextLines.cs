namespace Headroom.JobFiles.Editing;

/// <summary>Finds lines, depths and comments in a text, and how its lines end.</summary>
internal sealed class TextLines(string text)
{
    /// <summary>The text.</summary>
    public string Text { get; } = text;

    /// <summary>How the first line ends; a line feed when there is but one line.</summary>
    public string NewLine { get; } = FirstEnd(text);

    /// <summary>The index behind the last character of the line, in front of its end.</summary>
    public int LineEnd(int index)
    {
        var end = Text.AsSpan(index).IndexOfAny('\r', '\n');
        return end < 0 ? Text.Length : index + end;
    }

    /// <summary>How deep the line position of an index lies, from 0.</summary>
    public int Column(int index)
    {
        var start = Text.AsSpan(0, index).LastIndexOfAny('\r', '\n') + 1;
        return index - (start == 0 && Text.StartsWith('\uFEFF') ? 1 : start);
    }

    /// <summary>The end of the line of an index, and of the comment lines below it that lie deeper than a column: they belong to what stands there.</summary>
    public int OwnedEnd(int index, int column)
    {
        var owned = LineEnd(index);
        for (var line = NextLine(owned); line < Text.Length; line = NextLine(LineEnd(line)))
        {
            var first = FirstOf(line);
            if (first == LineEnd(line))
                continue;
            if (Text[first] != '#' || first - line <= column)
                break;
            owned = LineEnd(line);
        }

        return owned;
    }

    /// <summary>The end of the last line that holds anything, at or below an index, in front of a marker that ends the document.</summary>
    public int DocumentEnd(int index)
    {
        var last = LineEnd(index);
        for (var line = NextLine(last); line < Text.Length; line = NextLine(LineEnd(line)))
        {
            if (Text.AsSpan(line).StartsWith("..."))
                break;
            if (FirstOf(line) < LineEnd(line))
                last = LineEnd(line);
        }

        return last;
    }

    /// <summary>True when nothing but spaces and perhaps a comment stands between an index and the end of its line.</summary>
    public bool IsRestComment(int index)
    {
        var first = FirstOf(index);
        return first == LineEnd(index) || (Text[first] == '#' && first > index);
    }

    private int FirstOf(int index)
    {
        while (index < Text.Length && Text[index] is ' ' or '\t')
            index++;
        return index;
    }

    private int NextLine(int lineEnd) =>
        lineEnd >= Text.Length ? Text.Length
        : Text[lineEnd] == '\r' && lineEnd + 1 < Text.Length && Text[lineEnd + 1] == '\n' ? lineEnd + 2
        : lineEnd + 1;

    private static string FirstEnd(string text)
    {
        var end = text.AsSpan().IndexOfAny('\r', '\n');
        return end < 0 || text[end] == '\n' ? "\n" : end + 1 < text.Length && text[end + 1] == '\n' ? "\r\n" : "\r";
    }
}

using Headroom.Documents.Canvas;
using Headroom.Documents.Letters;

namespace Headroom.Documents.Layout;

/// <summary>Breaks a text into lines of a width.</summary>
internal static class TextWrap
{
    // A column is as wide as its longest word, up to the last digit of the sum.
    private const double Dust = 0.01;

    /// <summary>The lines of a text.</summary>
    /// <param name="text">The text; a line break begins a new line.</param>
    /// <param name="lettering">How it is written.</param>
    /// <param name="width">The width of a line [pt].</param>
    public static List<string> Lines(string text, Lettering lettering, double width)
    {
        var lines = new List<string>();
        width += Dust;
        foreach (var paragraph in text.Split('\n'))
            Wrap(paragraph.TrimEnd(), lettering, width, lines);
        return lines;
    }

    /// <summary>The width of the longest piece that is not broken [pt].</summary>
    public static double LongestWord(string text, Lettering lettering)
    {
        var longest = 0.0;
        foreach (var word in Pieces(text.Replace('\n', ' ')))
            longest = Math.Max(longest, Typeface.Width(word.TrimEnd(), lettering));
        return longest;
    }

    private static void Wrap(string paragraph, Lettering lettering, double width, List<string> lines)
    {
        if (Typeface.Width(paragraph, lettering) <= width)
        {
            lines.Add(paragraph);
            return;
        }

        var line = "";
        foreach (var piece in Pieces(paragraph))
        {
            if (line.Length > 0 && Typeface.Width((line + piece).TrimEnd(), lettering) > width)
            {
                lines.Add(line.TrimEnd());
                line = "";
            }

            line = Broken(line + piece, lettering, width, lines);
        }

        if (line.Trim().Length > 0)
            lines.Add(line.TrimEnd());
    }

    // A word wider than the line is broken where it must be; what is left of it begins the next line.
    private static string Broken(string line, Lettering lettering, double width, List<string> lines)
    {
        while (line.Length > 1 && Typeface.Width(line.TrimEnd(), lettering) > width)
        {
            var fits = 1;
            while (fits < line.Length - 1 && Typeface.Width(line[..(fits + 1)], lettering) <= width)
                fits++;
            if (char.IsHighSurrogate(line[fits - 1]))
                fits += fits == 1 ? 1 : -1;
            lines.Add(line[..fits]);
            line = line[fits..];
        }

        return line;
    }

    // A text may be broken behind a space, and behind a slash or hyphen between letters.
    private static IEnumerable<string> Pieces(string text)
    {
        var from = 0;
        for (var i = 0; i < text.Length; i++)
        {
            var may = text[i] == ' ' || (text[i] is '/' or '-' && i > from + 1 && i + 2 < text.Length && char.IsLetter(text[i + 1]));
            if (!may)
                continue;
            yield return text[from..(i + 1)];
            from = i + 1;
        }

        if (from < text.Length)
            yield return text[from..];
    }
}

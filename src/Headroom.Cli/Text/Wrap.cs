namespace Headroom.Cli.Text;

/// <summary>Breaks text into lines at spaces. A number stays with its unit; a word longer than a line is broken where it must.</summary>
internal static class Wrap
{
    private static readonly HashSet<string> Units =
        ["W", "kW", "V", "A", "mA", "VA", "m", "mm", "cm", "ft", "in", "K", "°C", "°F", "%", "dB", "dB(A)", "min", "h", "s", "ms", "kg", "lb", "U", "Mb/s", "Gb/s", "Ω", "mm²", "µF", "ports"];

    /// <summary>The lines of a text.</summary>
    public static IReadOnlyList<string> Lines(string text, int width)
    {
        var lines = new List<string>();
        var line = "";
        foreach (var word in Words(text))
        {
            if (line.Length > 0 && Columns.Of(line) + 1 + Columns.Of(word) <= width)
            {
                line += " " + word;
                continue;
            }

            if (line.Length > 0)
                lines.Add(line);
            line = BreakLong(word, width, lines);
        }

        if (line.Length > 0 || lines.Count == 0)
            lines.Add(line);
        return lines;
    }

    private static string BreakLong(string word, int width, List<string> lines)
    {
        while (Columns.Of(word) > width)
        {
            var head = Head(word, width);
            if (head.Length == 0)
                break;
            lines.Add(head);
            word = word[head.Length..].TrimStart();
        }

        return word;
    }

    // A number from its unit rather than within a word, a path behind one of its folders, else where the line ends.
    private static string Head(string word, int width)
    {
        var space = word.LastIndexOf(' ');
        if (space > 0 && Columns.Of(word[..space]) <= width)
            return word[..space];
        var line = Columns.Take(word, width);
        var folder = line.LastIndexOf('/');
        return folder > 0 && folder < line.Length - 1 ? line[..(folder + 1)] : line;
    }

    private static List<string> Words(string text)
    {
        var words = new List<string>();
        foreach (var word in text.Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            if (words.Count > 0 && char.IsAsciiDigit(words[^1][^1]) && Units.Contains(word.TrimEnd('.', ',', ';', ':', ')')))
                words[^1] += " " + word;
            else
                words.Add(word);
        }

        return words;
    }
}

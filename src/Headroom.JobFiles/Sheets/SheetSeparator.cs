
namespace Headroom.JobFiles.Sheets;

/// <summary>Finds what stands between the cells of a sheet.</summary>
internal static class SheetSeparator
{
    /// <summary>How many characters are looked at; more say nothing new.</summary>
    private const int Looked = 64 * 1024;

    /// <summary>The separators by the words people use.</summary>
    public static IReadOnlyList<(string Word, char Sign)> Words { get; } = [("semicolon", ';'), ("comma", ','), ("tab", '\t')];

    /// <summary>The word for a separator.</summary>
    public static string Word(char sign) => Words.First(known => known.Sign == sign).Word;

    /// <summary>Finds the separator, and the index at which the headings begin: a first line <c>sep=;</c> says it.</summary>
    /// <param name="text">The text.</param>
    /// <param name="stated">The separator that the person named; null to see for oneself.</param>
    /// <returns>The sign with how it is known, and where to read on; the other sign that would do as well, if any.</returns>
    public static (char Sign, string Why, int From, char? Rival) Find(string text, char? stated)
    {
        var from = 0;
        char? said = null;
        if (text.StartsWith("sep=", StringComparison.OrdinalIgnoreCase) && text.Length > 4 && Words.Any(known => known.Sign == text[4]))
        {
            said = text[4];
            from = Math.Min(text.Length, text.IndexOf('\n') is >= 0 and var end ? end + 1 : text.Length);
        }

        if (stated is { } sign)
            return (sign, "as you say", from, null);
        if (said is { } own)
            return (own, "as its first line says", from, null);
        var counts = Words.Select(known => (known.Sign, Lines: Counts(text.AsSpan(from), known.Sign))).Select(known => (known.Sign, Score: Score(known.Lines), known.Lines)).OrderByDescending(known => known.Score).ToList();
        var best = counts[0];
        if (best.Score.Cells == 0)
            return (';', "no line has one", from, null);
        var rival = counts[1].Score.Cells > 0 && counts[1].Score.Agreeing == best.Score.Agreeing ? counts[1].Sign : (char?)null;
        return (best.Sign, $"{best.Score.Agreeing} of {best.Lines.Count} lines have {best.Score.Cells + 1} cells by it", from, rival);
    }

    /// <summary>The finding about two signs of which either may be meant.</summary>
    public static (string Given, string Allowed, string Advice) Unclear(char sign, char rival) => (
        $"a {Word(sign)} may stand between the cells, or a {Word(rival)}",
        string.Join(", ", Words.Select(known => known.Word)),
        $"say which: 'separator: {Word(sign)}' in the job, or --separator {Word(sign)}; probably it is the {Word(sign)}");

    // Of lines that agree with the line of headings, and of its signs, more is better.
    private static (int Agreeing, int Cells) Score(List<int> lines) =>
        lines.Count == 0 || lines[0] == 0 ? (0, 0) : (lines.Count(count => count == lines[0]), lines[0]);

    // The signs outside quotation marks of each line in which anything stands.
    private static List<int> Counts(ReadOnlySpan<char> text, char sign)
    {
        var lines = new List<int>();
        var (count, quoted, any) = (0, false, false);
        foreach (var character in text[..Math.Min(text.Length, Looked)])
        {
            quoted ^= character == '"';
            if (character is '\n' or '\r' && !quoted)
            {
                if (any)
                    lines.Add(count);
                (count, any) = (0, false);
                continue;
            }

            any |= character != ' ' && character != sign;
            count += character == sign && !quoted ? 1 : 0;
        }

        if (any && text.Length <= Looked)
            lines.Add(count);
        return lines;
    }
}

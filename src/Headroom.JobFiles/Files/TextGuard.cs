using Headroom.Domain.Findings;

namespace Headroom.JobFiles.Files;

/// <summary>Looks through a text for what must not stand in it before anything reads it.</summary>
internal static class TextGuard
{
    /// <summary>The most findings of one kind that are listed.</summary>
    public const int MostListed = 50;

    /// <summary>All findings about characters and tabs, in order of place.</summary>
    public static List<Finding> Check(string text, Place first)
    {
        var findings = Characters(text, first);
        Tabs(text, first, findings);
        return findings;
    }

    /// <summary>All findings about characters, in order of place.</summary>
    public static List<Finding> Characters(string text, Place first)
    {
        var findings = new List<Finding>();
        var walk = new LineWalk(text, first);
        var from = 0;
        for (var count = 1; OddCharacters.Next(text.AsSpan(from)) is >= 0 and var found; count++)
        {
            var at = walk.To(from + found);
            if (count > MostListed)
            {
                findings.Add(new(Severity.Error, FileCodes.More.Code, at, "more characters that cannot be seen", "none of them", "mend those listed, then check again"));
                break;
            }

            findings.Add(Odd(text[from + found], at));
            from += found + 1;
        }

        return findings;
    }

    /// <summary>The finding about one odd character.</summary>
    public static Finding Odd(char character, Place at)
    {
        var name = OddCharacters.Name(character);
        if (OddCharacters.IsControl(character))
            return new(Severity.Error, FileCodes.ControlCharacter.Code, at, $"the control character {name}", "text that can be seen", "take it out");
        return OddCharacters.IsJoiner(character)
            ? new(Severity.Question, FileCodes.Unseen.Code, at, $"the joiner {name}, which cannot be seen", "text that can be seen", "take it out, unless the word is spelled with it")
            : new(Severity.Error, FileCodes.Unseen.Code, at, $"the character {name}, which cannot be seen", "text that can be seen", "take it out");
    }

    // The library reports a tab at the beginning of the file, wherever it stands; so it is looked for here.
    private static void Tabs(string text, Place begin, List<Finding> findings)
    {
        Place? first = null;
        var lines = 0;
        var line = begin.Line;
        for (var start = 0; start < text.Length; line++)
        {
            var end = start;
            while (end < text.Length && text[end] is not ('\n' or '\r'))
                end++;
            var tab = TabInIndentation(text.AsSpan(start, end - start));
            if (tab >= 0)
            {
                first ??= new Place(begin.File, line, tab + 1);
                lines++;
            }

            start = end + (end + 1 < text.Length && text[end] == '\r' && text[end + 1] == '\n' ? 2 : 1);
        }

        if (first is { } at)
            findings.Add(new(Severity.Error, FileCodes.Tab.Code, at, Count(lines), "spaces in front of a line", "replace each tab by two spaces"));
    }

    private static string Count(int lines) => lines == 1 ? "a tab in front of a line" : $"a tab in front of this line and of {lines - 1} more";

    private static int TabInIndentation(ReadOnlySpan<char> line)
    {
        var tab = -1;
        for (var i = 0; i < line.Length; i++)
        {
            if (line[i] is not (' ' or '\t'))
                return line[i] == '#' ? -1 : tab;
            if (line[i] == '\t' && tab < 0)
                tab = i;
        }

        return -1;
    }
}

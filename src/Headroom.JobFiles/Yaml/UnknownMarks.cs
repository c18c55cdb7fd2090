namespace Headroom.JobFiles.Yaml;

/// <summary>Lets people write <c>length: ?</c>. For YAML a lone question mark begins a key, so the parser is given another character in its place.</summary>
internal static class UnknownMarks
{
    // From the private area of Unicode: no keyboard has it.
    private const char Placeholder = '\uE000';

    /// <summary>The text with every lone question mark behind a colon, a comma, a bracket or a list's hyphen replaced by a placeholder of the same length.</summary>
    public static string Hide(string text)
    {
        var at = NextLone(text, 0);
        if (at < 0)
            return text;
        var characters = text.ToCharArray();
        for (; at >= 0; at = NextLone(text, at + 1))
            characters[at] = Placeholder;
        return new string(characters);
    }

    /// <summary>A value with its question marks back.</summary>
    public static string Restore(string value) => value.Replace(Placeholder, '?');

    private static int NextLone(string text, int from)
    {
        while ((from = text.IndexOf('?', from)) >= 0 && !IsLone(text, from))
            from++;
        return from;
    }

    private static bool IsLone(string text, int at)
    {
        if (at + 1 < text.Length && text[at + 1] is not (' ' or '\n' or '\r'))
            return false;
        var before = at - 1;
        while (before >= 0 && text[before] == ' ')
            before--;
        return before >= 0 && (text[before] is ',' or '[' || (before < at - 1 && text[before] is ':' or '-'));
    }
}

using System.Text;

namespace Headroom.JobFiles;

/// <summary>Puts what somebody wrote into a message: short, on one line, and without characters that would act on a terminal.</summary>
internal static class Words
{
    private const int Most = 60;

    /// <summary>The text for a message.</summary>
    public static string Short(string text)
    {
        var cut = text.Length > Most;
        var shown = new StringBuilder();
        foreach (var rune in (cut ? text[..Most] : text).EnumerateRunes())
            shown.Append(Rune.IsControl(rune) || Files.OddCharacters.Next(rune.ToString()) >= 0 ? Shown(rune) : rune.ToString());
        return cut ? shown.Append("...").ToString() : shown.ToString();
    }

    /// <summary>Several words: <c>a, b or c</c>.</summary>
    public static string Or(IReadOnlyCollection<string> words) => words.Count < 2
        ? string.Concat(words)
        : string.Join(", ", words.SkipLast(1)) + " or " + words.Last();

    /// <summary>A noun with its article: <c>an endpoint</c>.</summary>
    public static string A(string noun) => ("aeiou".Contains(noun[0]) ? "an " : "a ") + noun;

    /// <summary>More than one of a noun.</summary>
    public static string Plural(string noun) =>
        noun.EndsWith('y') ? noun[..^1] + "ies" : noun.EndsWith("ch", StringComparison.Ordinal) ? noun + "es" : noun + "s";

    private static string Shown(Rune rune) => rune.Value is '\n' or '\r' or '\t' ? " " : $"<U+{rune.Value:X4}>";
}

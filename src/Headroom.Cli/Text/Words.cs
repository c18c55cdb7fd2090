using Headroom.Domain.Ledgers;

namespace Headroom.Cli.Text;

/// <summary>Small words and joints of sentences that several sheets share.</summary>
internal static class Words
{
    /// <summary>A verdict as a word.</summary>
    public static string Of(Verdict verdict) => verdict switch
    {
        Verdict.Short => "short",
        Verdict.Tight => "tight",
        Verdict.Clear => "clear",
        _ => "unknown",
    };

    /// <summary>A count with the right form of its noun.</summary>
    public static string Count(int count, string one, string many) => $"{count} {(count == 1 ? one : many)}";

    /// <summary>A list in words: <c>a, b or c</c>.</summary>
    public static string Or(IReadOnlyList<string> words) =>
        words.Count < 2 ? string.Concat(words) : string.Join(", ", words.SkipLast(1)) + " or " + words[^1];

    /// <summary>A text as a sentence of its own: a full stop at its end, its first letter large unless a name such as <c>ap-1</c> stands there.</summary>
    public static string Sentence(string text)
    {
        text = text.Trim();
        if (text.Length == 0)
            return text;
        var end = text[^1] is '.' or '?' or '!' ? "" : ".";
        var first = text.Split(' ')[0].TrimEnd(',', ';', ':', '.');
        return (first.All(char.IsLetter) ? char.ToUpperInvariant(text[0]) : text[0]) + text[1..] + end;
    }

    /// <summary>A word as it is typed in a shell: in quotation marks where it holds a space.</summary>
    public static string Quoted(string word) => word.Contains(' ') ? $"\"{word}\"" : word;
}

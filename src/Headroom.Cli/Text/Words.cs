using Headroom.Domain.Ledgers;

namespace Headroom.Cli.Text;

/// <summary>Small words and joints of sentences that several sheets share.</summary>
internal static class Words
{
    /// <summary>A verdict as a word.</summary>
    public static string Of(Verdict verdict) => LedgerInWords.Word(verdict);

    /// <summary>A count with the right form of its noun.</summary>
    public static string Count(int count, string one, string many) => $"{count} {(count == 1 ? one : many)}";

    /// <summary>A list in words: <c>a, b or c</c>.</summary>
    public static string Or(IReadOnlyList<string> words) =>
        words.Count < 2 ? string.Concat(words) : string.Join(", ", words.SkipLast(1)) + " or " + words[^1];

    /// <summary>A text as a sentence of its own.</summary>
    public static string Sentence(string text) => LedgerInWords.Sentence(text);

    /// <summary>A word as it is typed in a shell: in quotation marks where it holds a space.</summary>
    public static string Quoted(string word) => word.Contains(' ') ? $"\"{word}\"" : word;
}

using Headroom.Domain.Ledgers;

namespace Headroom.Domain.Shown;

/// <summary>What stands above every table of limits, in plain words: what is short, why, what mends it, and what is still unknown.</summary>
public static class LedgerInWords
{
    private const int Most = 3;

    /// <summary>The paragraphs about a ledger.</summary>
    /// <param name="ledger">The ledger.</param>
    /// <returns>One or two paragraphs.</returns>
    public static IEnumerable<string> Paragraphs(Ledger ledger)
    {
        yield return First(ledger);
        if (Unknown(ledger) is { } unknown)
            yield return unknown;
    }

    /// <summary>A verdict as a word.</summary>
    /// <param name="verdict">The verdict.</param>
    public static string Word(Verdict verdict) => verdict switch
    {
        Verdict.Short => "short",
        Verdict.Tight => "tight",
        Verdict.Clear => "clear",
        _ => "unknown",
    };

    /// <summary>A text as a sentence of its own: a full stop at its end, its first letter large unless a name such as <c>ap-1</c> stands there.</summary>
    /// <param name="text">The text.</param>
    public static string Sentence(string text)
    {
        text = text.Trim();
        if (text.Length == 0)
            return text;
        var first = text.Split(' ')[0].TrimEnd(',', ';', ':', '.');
        return (first.All(char.IsLetter) ? char.ToUpperInvariant(text[0]) : text[0]) + Ended(text)[1..];
    }

    private static string First(Ledger ledger)
    {
        if (ledger.Entries.Count == 0)
            return "No limit was found in what was asked for, so there is nothing to say.";
        if (ledger.Count(Verdict.Short) > 0)
            return "Short: " + Tell(ledger, Verdict.Short, "short");
        if (ledger.Count(Verdict.Tight) > 0)
            return "Nothing is short. Tight: " + Tell(ledger, Verdict.Tight, "tight");
        return ledger.Count(Verdict.Unknown) > 0 ? "Nothing that is known is short or tight." : "Nothing is short or tight.";
    }

    private static string Tell(Ledger ledger, Verdict verdict, string word)
    {
        var told = ledger.Entries.Where(entry => entry.Verdict == verdict).ToList();
        var sentences = told.Take(Most).Select((entry, index) => Said(entry, index == 0)).Distinct().ToList();
        if (told.Count > Most)
            sentences.Add($"And {told.Count - Most} more {(told.Count - Most == 1 ? "is" : "are")} {word}.");
        var advice = told.SelectMany(entry => entry.Advice).FirstOrDefault();
        if (advice is not null)
            sentences.Add(Sentence(advice));
        return string.Join(" ", sentences);
    }

    // Behind the colon, and where the name of the thing begins it, a sentence keeps its small letter.
    private static string Said(LedgerEntry entry, bool first)
    {
        var text = entry.Story.Say(entry).Trim();
        return first || text.StartsWith(entry.Subject, StringComparison.Ordinal) ? Ended(text) : Sentence(text);
    }

    private static string Ended(string text) => text.Length > 0 && text[^1] is '.' or '?' or '!' ? text : text + ".";

    private static string? Unknown(Ledger ledger)
    {
        var questions = ledger.Entries
            .Where(entry => entry.Verdict == Verdict.Unknown && entry.Question is not null)
            .GroupBy(entry => entry.Question)
            .Select(asked => $"{string.Join(", ", asked.Select(entry => entry.Subject).Distinct())}: {asked.Key}")
            .ToList();
        if (questions.Count == 0)
            return null;
        var left = questions.Count - Most;
        var more = left > 0 ? $" And {left} more question{(left == 1 ? "" : "s")}." : "";
        return "Unknown: " + string.Join(" ", questions.Take(Most).Select(Ended)) + more;
    }
}

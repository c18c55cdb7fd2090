using Headroom.Domain.Ledgers;

namespace Headroom.Cli.Text;

/// <summary>What stands above the table, in plain words: what is short, why, what mends it, and what is still unknown.</summary>
internal static class SheetSummary
{
    private const int Most = 3;

    /// <summary>Writes the paragraphs.</summary>
    public static void Write(Page page, Ledger ledger)
    {
        page.Gap();
        if (ledger.Entries.Count == 0)
            page.Paragraph("No limit was found in what was asked for, so there is nothing to say.");
        else if (ledger.Count(Verdict.Short) > 0)
            page.Paragraph("Short: " + Tell(ledger, Verdict.Short, "short"));
        else if (ledger.Count(Verdict.Tight) > 0)
            page.Paragraph("Nothing is short. Tight: " + Tell(ledger, Verdict.Tight, "tight"));
        else
            page.Paragraph(ledger.Count(Verdict.Unknown) > 0 ? "Nothing that is known is short or tight." : "Nothing is short or tight.");
        WriteUnknown(page, ledger);
        page.Gap();
    }

    private static string Tell(Ledger ledger, Verdict verdict, string word)
    {
        var told = ledger.Entries.Where(entry => entry.Verdict == verdict).ToList();
        var sentences = told.Take(Most).Select((entry, index) => Sentence(entry, index == 0)).Distinct().ToList();
        if (told.Count > Most)
            sentences.Add($"And {told.Count - Most} more {(told.Count - Most == 1 ? "is" : "are")} {word}.");
        var advice = told.SelectMany(entry => entry.Advice).FirstOrDefault();
        if (advice is not null)
            sentences.Add(Words.Sentence(advice));
        return string.Join(" ", sentences);
    }

    // Behind the colon, and where the name of the thing begins it, a sentence keeps its small letter.
    private static string Sentence(LedgerEntry entry, bool first)
    {
        var text = entry.Story.Say(entry).Trim();
        return first || text.StartsWith(entry.Subject, StringComparison.Ordinal) ? Ended(text) : Words.Sentence(text);
    }

    private static string Ended(string text) => text.Length > 0 && text[^1] is '.' or '?' or '!' ? text : text + ".";

    private static void WriteUnknown(Page page, Ledger ledger)
    {
        var questions = ledger.Entries
            .Where(entry => entry.Verdict == Verdict.Unknown && entry.Question is not null)
            .GroupBy(entry => entry.Question)
            .Select(asked => $"{string.Join(", ", asked.Select(entry => entry.Subject).Distinct())}: {asked.Key}")
            .ToList();
        if (questions.Count == 0)
            return;
        var more = questions.Count > Most ? $" And {Words.Count(questions.Count - Most, "more question", "more questions")}." : "";
        page.Paragraph("Unknown: " + string.Join(" ", questions.Take(Most).Select(Ended)) + more);
    }
}

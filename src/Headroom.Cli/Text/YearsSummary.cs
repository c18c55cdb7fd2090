using Headroom.Domain.Ledgers;
using Headroom.Engineering.Years;

namespace Headroom.Cli.Text;

/// <summary>What stands above the tables of the years: what becomes short first, what tight, and what asks for an answer.</summary>
internal static class YearsSummary
{
    /// <summary>Writes the paragraphs.</summary>
    public static void Write(Page page, YearsResult result)
    {
        page.Paragraph(Short(result));
        page.Paragraph(Tight(result));
        if (result.Years.FirstOrDefault(year => year.WithoutPort > 0) is { } full)
            page.Paragraph($"No port: by {YearWords.Day(full.On)} {Words.Count(full.WithoutPort, "added device has", "added devices have")} no free port of a switch.");
        var unknown = result.Rates.Count(rate => rate.Question is not null);
        if (unknown > 0)
            page.Paragraph($"Not counted, because nobody said: {string.Join(", ", result.Rates.Where(rate => rate.Question is not null).Select(rate => rate.What))}.");
    }

    private static string Short(YearsResult result)
    {
        var today = result.Years[0].Count(Verdict.Short);
        var already = today > 0 ? $"{Words.Count(today, "limit is", "limits are")} short today already ('headroom study' tells them). " : "";
        return result.FirstShort is { } first
            ? $"{already}{(today > 0 ? "Next" : "First")} short, by {YearWords.Day(first.On)}: {Told(first)}"
            : $"{already}Nothing {(today > 0 ? "more " : "")}becomes short until {YearWords.Day(result.Years[^1].On)}, as far as is known.";
    }

    private static string Tight(YearsResult result) => result.FirstTight is { } first
        ? $"First tight, by {YearWords.Day(first.On)}: {Told(first)}"
        : "Nothing that is clear today becomes tight.";

    private static string Told(Turn turn) => $"{YearWords.Say(turn.Entry)} ({turn.Entry.Id}). Why: {YearWords.Why(turn)}.";
}

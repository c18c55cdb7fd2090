using System.Globalization;
using Headroom.Domain.Ledgers;

namespace Headroom.Engineering.Years;

/// <summary>What becomes of a site over the years, in words that sheets, pages and CSV share.</summary>
public static class YearWords
{
    private static readonly (Change Change, string Word)[] Causes =
        [(Change.Devices, "devices added"), (Change.Batteries, "batteries age"), (Change.Dust, "dust in fans"), (Change.Prices, "prices rise")];

    /// <summary>What becomes short first, what tight, what finds no port, and what nobody said: a paragraph each.</summary>
    /// <param name="result">The years.</param>
    /// <param name="today">What tells of what is short today, such as <c>the ledger tells them</c>.</param>
    public static IReadOnlyList<string> Paragraphs(YearsResult result, string today)
    {
        List<string> all = [Short(result, today), Tight(result)];
        if (result.Years.FirstOrDefault(year => year.WithoutPort > 0) is { } full)
            all.Add($"No port: by {Day(full.On)} {Count(full.WithoutPort, "added device has", "added devices have")} no free port of a switch.");
        if (result.Rates.Any(rate => rate.Question is not null))
            all.Add($"Not counted, because nobody said: {string.Join(", ", result.Rates.Where(rate => rate.Question is not null).Select(rate => rate.What))}.");
        return all;
    }

    /// <summary>Why it turned: each change that is enough by itself.</summary>
    /// <param name="turn">What turned.</param>
    public static string Why(Turn turn) => turn.By == Change.None
        ? "only all together"
        : string.Join(" or ", Causes.Where(cause => turn.By.HasFlag(cause.Change)).Select(cause => cause.Word));

    /// <summary>A day as people write it.</summary>
    /// <param name="day">The day.</param>
    public static string Day(DateOnly day) => day.ToString("d MMM yyyy", CultureInfo.InvariantCulture);

    /// <summary>A day as files have it.</summary>
    /// <param name="day">The day.</param>
    public static string Plain(DateOnly day) => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

    /// <summary>The sentence that an entry tells, without its full stop.</summary>
    /// <param name="entry">The entry.</param>
    public static string Say(LedgerEntry entry) => entry.Story.Say(entry).Trim().TrimEnd('.');

    /// <summary>What was added by some year: <c>+3 camera, +3 phone</c>.</summary>
    /// <param name="added">What was added.</param>
    public static string Added(IReadOnlyList<AddedDevices> added)
    {
        var parts = added.Where(one => one.Count > 0).Select(one => $"+{one.Count} {one.Name}").ToList();
        return parts.Count == 0 ? "nothing" : string.Join(", ", parts);
    }

    private static string Short(YearsResult result, string today)
    {
        var count = result.Years[0].Count(Verdict.Short);
        var already = count > 0 ? $"{Count(count, "limit is", "limits are")} short today already ({today}). " : "";
        return result.FirstShort is { } first
            ? $"{already}{(count > 0 ? "Next" : "First")} short, by {Day(first.On)}: {Told(first)}"
            : $"{already}Nothing {(count > 0 ? "more " : "")}becomes short until {Day(result.Years[^1].On)}, as far as is known.";
    }

    private static string Tight(YearsResult result) => result.FirstTight is { } first
        ? $"First tight, by {Day(first.On)}: {Told(first)}"
        : result.FirstShort is null ? "Nothing that is clear today becomes tight." : "What becomes short is not tight first.";

    private static string Told(Turn turn) => $"{Say(turn.Entry)} ({turn.Entry.Id}). Why: {Why(turn)}.";

    private static string Count(int count, string one, string many) => $"{count.ToString(CultureInfo.InvariantCulture)} {(count == 1 ? one : many)}";
}

using System.Globalization;
using Headroom.Domain.Findings;
using Headroom.Domain.Jobs;

namespace Headroom.Domain.Rules;

/// <summary>Asks about numbers that are missing in a series such as K-01, K-02, K-04.</summary>
internal static class NumberingQuestions
{
    private const int FewestOfASeries = 3;

    /// <summary>Asks about the drops and the endpoints that were written one by one; one question a series.</summary>
    public static void Ask(Survey survey, Slips slips)
    {
        var drops = new Dictionary<string, NumberedSeries>();
        foreach (var drop in survey.Drops)
            Put(drop.Id, drop.At, drops);
        Gaps(drops, "drops", slips);

        var endpoints = new Dictionary<string, NumberedSeries>();
        foreach (var endpoint in survey.Endpoints)
        {
            if (endpoint.CountedAs is null)
                Put(endpoint.Id, endpoint.At, endpoints);
        }

        Gaps(endpoints, "endpoints", slips);
    }

    private static void Put(string id, Place at, Dictionary<string, NumberedSeries> series)
    {
        if (Split(id) is not { } part)
            return;
        // Without leading zeros 9 and 10 are of one series; with them the width tells series apart.
        var width = part.Digits[0] == '0' ? part.Digits.Length : 0;
        var key = Key(part.Prefix, width);
        if (!series.TryGetValue(key, out var members))
            series[key] = members = new NumberedSeries(part.Prefix, width);
        members.Add(part.Number, at);
    }

    private static string Key(string prefix, int width) => string.Create(CultureInfo.InvariantCulture, $"{width} {prefix}");

    private static void Gaps(Dictionary<string, NumberedSeries> series, string what, Slips slips)
    {
        // K-01 has a leading zero and K-12 has none: numbers without one join the only series of their prefix that has as many digits.
        foreach (var padded in series.Values)
        {
            if (padded.Width > 0 && series.TryGetValue(Key(padded.Prefix, 0), out var plain))
                plain.Move(padded.Width, padded);
        }

        foreach (var members in series.Values)
            Gaps(members, what, slips);
    }

    private static void Gaps(NumberedSeries series, string what, Slips slips)
    {
        if (series.Count < FewestOfASeries)
            return;
        var sorted = series.Sorted();
        var missing = sorted[^1] - (long)sorted[0] + 1 - sorted.Length;
        // More numbers missing than there: these are room numbers or the like, not a count.
        if (missing == 0 || missing >= sorted.Length)
            return;
        var behind = 1;
        while (sorted[behind] == sorted[behind - 1] + 1)
            behind++;
        slips.Add(RuleCodes.NumberingGap, series.PlaceOf(sorted[behind]), Said(series, what, sorted), series.Prefix);
    }

    private static Said Said(NumberedSeries series, string what, int[] numbers)
    {
        var gaps = new List<string>();
        for (var i = 1; i < numbers.Length; i++)
        {
            if (numbers[i] == numbers[i - 1] + 2)
                gaps.Add(Name(numbers[i] - 1));
            else if (numbers[i] > numbers[i - 1] + 2)
                gaps.Add($"{Name(numbers[i - 1] + 1)}..{Name(numbers[i] - 1)}");
        }

        return new(
            $"in the {what} {Name(numbers[0])} to {Name(numbers[^1])} there is no {Slips.Some(gaps)}",
            "a series of labels usually runs through",
            "Was one forgotten? Nothing is wrong when there is none.");

        string Name(int number) => series.Prefix + number.ToString(CultureInfo.InvariantCulture).PadLeft(series.Width, '0');
    }

    private static (string Prefix, string Digits, int Number)? Split(string id)
    {
        var start = id.Length;
        while (start > 0 && char.IsAsciiDigit(id[start - 1]))
            start--;
        var digits = id[start..];
        return int.TryParse(digits, NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? (id[..start], digits, number) : null;
    }
}

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
        Series(survey.Drops.Select(d => (d.Id, d.At)), "drops", slips);
        Series(survey.Endpoints.Where(e => e.CountedAs is null).Select(e => (e.Id, e.At)), "endpoints", slips);
    }

    private static void Series(IEnumerable<(string Id, Place At)> things, string what, Slips slips)
    {
        var series = new Dictionary<(string Prefix, int Width), List<(int Number, Place At)>>();
        foreach (var (id, at) in things)
        {
            if (Split(id) is not { } part)
                continue;
            // Without leading zeros 9 and 10 are of one series; with them the width tells series apart.
            var key = (part.Prefix, part.Digits[0] == '0' ? part.Digits.Length : 0);
            if (!series.TryGetValue(key, out var members))
                series[key] = members = [];
            members.Add((part.Number, at));
        }

        foreach (var ((prefix, width), members) in Together(series))
            Gaps((prefix, width, what), members, slips);
    }

    // K-01 has a leading zero and K-12 has none: numbers without one join the only series of their prefix that has as many digits.
    private static Dictionary<(string Prefix, int Width), List<(int Number, Place At)>> Together(
        Dictionary<(string Prefix, int Width), List<(int Number, Place At)>> series)
    {
        foreach (var ((prefix, width), members) in series.Where(s => s.Key.Width > 0).ToList())
        {
            if (!series.TryGetValue((prefix, 0), out var plain))
                continue;
            members.AddRange(plain.Where(m => m.Number.ToString(CultureInfo.InvariantCulture).Length == width));
            plain.RemoveAll(m => m.Number.ToString(CultureInfo.InvariantCulture).Length == width);
        }

        return series;
    }

    private static void Gaps((string Prefix, int Width, string What) series, List<(int Number, Place At)> members, Slips slips)
    {
        if (members.Count < FewestOfASeries)
            return;
        var sorted = members.DistinctBy(m => m.Number).OrderBy(m => m.Number).ToList();
        var missing = sorted[^1].Number - (long)sorted[0].Number + 1 - sorted.Count;
        // More numbers missing than there: these are room numbers or the like, not a count.
        if (missing == 0 || missing >= sorted.Count)
            return;
        var behind = sorted.Zip(sorted.Skip(1)).First(pair => pair.Second.Number > pair.First.Number + 1);
        slips.Add(RuleCodes.NumberingGap, behind.Second.At, Said(series, sorted.ConvertAll(m => m.Number)), series.Prefix);
    }

    private static Said Said((string Prefix, int Width, string What) series, List<int> numbers)
    {
        var gaps = numbers.Zip(numbers.Skip(1)).Where(pair => pair.Second > pair.First + 1)
            .Select(pair => pair.Second == pair.First + 2
                ? Name(pair.First + 1)
                : $"{Name(pair.First + 1)}..{Name(pair.Second - 1)}")
            .ToList();
        return new(
            $"in the {series.What} {Name(numbers[0])} to {Name(numbers[^1])} there is no {Slips.Some(gaps)}",
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

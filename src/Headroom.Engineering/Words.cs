using System.Globalization;
using Headroom.Domain.Quantities;
using Headroom.Domain.Shown;

namespace Headroom.Engineering;

/// <summary>Small pieces of wording that all disciplines share.</summary>
internal static class Words
{
    /// <summary>A number as people read it.</summary>
    public static string Of(double value) => NumberManner.Current.Written(QuantityText.Show(value));

    /// <summary>A number with its unit.</summary>
    public static string Of(double value, string unit) => $"{Of(value)} {unit}";

    /// <summary>A list: <c>a</c>, <c>a and b</c>, <c>a, b and c</c>; a long one ends in how many more there are.</summary>
    public static string List(IReadOnlyList<string> items, int most = 6) => items.Count switch
    {
        0 => "",
        1 => items[0],
        _ when items.Count > most => $"{string.Join(", ", items.Take(most))} and {items.Count - most} more",
        _ => $"{string.Join(", ", items.Take(items.Count - 1))} and {items[^1]}",
    };

    /// <summary>Numbers in runs: <c>1-4, 7, 9-12</c>.</summary>
    public static string Runs(IEnumerable<int> numbers)
    {
        var parts = new List<string>();
        var sorted = numbers.Distinct().Order().ToList();
        for (var i = 0; i < sorted.Count;)
        {
            var end = i;
            while (end + 1 < sorted.Count && sorted[end + 1] == sorted[end] + 1)
                end++;
            parts.Add(end == i ? sorted[i].ToString(CultureInfo.InvariantCulture) : string.Create(CultureInfo.InvariantCulture, $"{sorted[i]}-{sorted[end]}"));
            i = end + 1;
        }

        return string.Join(", ", parts);
    }

    /// <summary>A count with its noun: <c>1 port</c>, <c>3 ports</c>.</summary>
    public static string Count(int count, string noun) => string.Create(CultureInfo.InvariantCulture, $"{count} {noun}{(count == 1 ? "" : "s")}");

    /// <summary>The sentence with a capital first letter.</summary>
    public static string Capital(string sentence) => sentence.Length == 0 ? sentence : char.ToUpperInvariant(sentence[0]) + sentence[1..];
}

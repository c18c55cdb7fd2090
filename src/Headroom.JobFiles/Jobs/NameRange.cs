using System.Globalization;

namespace Headroom.JobFiles.Jobs;

/// <summary>Names that are counted through: <c>K-01..K-12</c>.</summary>
internal static class NameRange
{
    /// <summary>The most names in one range.</summary>
    public const int Most = 1000;

    /// <summary>The names from the first to the last; null when they cannot be counted through.</summary>
    /// <remarks>Both have the same letters in front, and the same number of digits unless the first begins without a zero. The last may be the number alone.</remarks>
    public static IReadOnlyList<string>? Names(string first, string last)
    {
        var prefix = first[..DigitsAt(first)];
        var from = first[prefix.Length..];
        var to = last.StartsWith(prefix, StringComparison.Ordinal) ? last[prefix.Length..] : last;
        if (Number(from) is not { } low || Number(to) is not { } high || high < low || high - low >= Most)
            return null;
        var padded = from.Length == to.Length;
        if (!padded && from[0] == '0')
            return null;
        var format = padded ? new string('0', from.Length) : "0";
        var names = new string[high - low + 1];
        for (var i = 0; i < names.Length; i++)
            names[i] = prefix + (low + i).ToString(format, CultureInfo.InvariantCulture);
        return names;
    }

    private static int DigitsAt(string name)
    {
        var at = name.Length;
        while (at > 0 && char.IsAsciiDigit(name[at - 1]))
            at--;
        return at;
    }

    // Up to nine digits fit; more are no number anybody counts with.
    private static int? Number(string digits) =>
        digits.Length is > 0 and < 10 && int.TryParse(digits, NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? number : null;
}

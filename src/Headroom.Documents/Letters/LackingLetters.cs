using System.Globalization;
using System.Text;

namespace Headroom.Documents.Letters;

/// <summary>Says which signs of what is written our fonts lack, so that nobody wonders about their codes.</summary>
internal static class LackingLetters
{
    private const int MostTold = 6;

    /// <summary>The sentence; null when nothing is lacking.</summary>
    /// <param name="texts">What is written.</param>
    public static string? Sentence(IEnumerable<string> texts)
    {
        var lacking = new HashSet<Rune>();
        foreach (var text in texts)
            lacking.UnionWith(Typeface.Lacking(text));
        if (lacking.Count == 0)
            return null;
        var codes = lacking.Order().Take(MostTold).Select(rune => string.Create(CultureInfo.InvariantCulture, $"[U+{rune.Value:X4}]"));
        var more = lacking.Count > MostTold ? string.Create(CultureInfo.InvariantCulture, $" and {lacking.Count - MostTold} more") : "";
        return $"Signs that the letters of this paper lack stand as their Unicode codes: {string.Join(", ", codes)}{more}. The job has the names as they were written.";
    }
}

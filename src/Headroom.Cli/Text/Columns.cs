using System.Globalization;
using System.Text;

namespace Headroom.Cli.Text;

/// <summary>Measures, cuts and pads text by the columns it takes on a terminal, which are not its characters.</summary>
internal static class Columns
{
    /// <summary>How many columns a text takes: two for wide signs, none for combining ones.</summary>
    public static int Of(string text)
    {
        var columns = 0;
        foreach (var rune in text.EnumerateRunes())
            columns += Of(rune);
        return columns;
    }

    /// <summary>The text, cut to a width with the sign for a cut when it is wider.</summary>
    public static string Fit(string text, int width, string cut)
    {
        if (Of(text) <= width)
            return text;
        return cut.Length >= width ? Take(text, width) : Take(text, width - cut.Length).TrimEnd() + cut;
    }

    /// <summary>
    /// The text, cut before its last separator when it is wider: what tells two names of one kind apart stands at the end,
    /// as in <c>phone-12</c> or <c>volts at the far end, at night</c>.
    /// </summary>
    public static string FitMiddle(string text, int width, string cut, string separator)
    {
        var at = text.LastIndexOf(separator, StringComparison.Ordinal);
        var head = at < 0 ? 0 : width - Of(text[at..]);
        return Of(text) <= width || head < width / 4 || head <= cut.Length
            ? Fit(text, width, cut)
            : Fit(text[..at], head, cut) + text[at..];
    }

    /// <summary>As much of the text as a width holds.</summary>
    public static string Take(string text, int width)
    {
        var taken = 0;
        var columns = 0;
        foreach (var rune in text.EnumerateRunes())
        {
            columns += Of(rune);
            if (columns > width)
                break;
            taken += rune.Utf16SequenceLength;
        }

        return text[..taken];
    }

    /// <summary>The text with spaces behind it up to a width.</summary>
    public static string Left(string text, int width) => text + new string(' ', Math.Max(0, width - Of(text)));

    /// <summary>The text with spaces before it up to a width.</summary>
    public static string Right(string text, int width) => new string(' ', Math.Max(0, width - Of(text))) + text;

    private static int Of(Rune rune) => Rune.GetUnicodeCategory(rune) switch
    {
        UnicodeCategory.NonSpacingMark or UnicodeCategory.EnclosingMark or UnicodeCategory.Format => 0,
        _ => IsWide(rune.Value) ? 2 : 1,
    };

    // The wide and full-width blocks of Unicode Standard Annex 11, from memory, roughly: a column too many is harmless.
    private static bool IsWide(int code) => code is
        (>= 0x1100 and <= 0x115F) or (>= 0x2E80 and <= 0xA4CF) or (>= 0xAC00 and <= 0xD7A3) or (>= 0xF900 and <= 0xFAFF)
        or (>= 0xFE30 and <= 0xFE6F) or (>= 0xFF00 and <= 0xFF60) or (>= 0xFFE0 and <= 0xFFE6) or (>= 0x1F300 and <= 0x1FAFF) or (>= 0x20000 and <= 0x3FFFD);
}

using System.Globalization;

namespace Headroom.JobFiles.Files;

/// <summary>Characters that have no business in a file people read: they cannot be seen, or make a line look like another.</summary>
internal static class OddCharacters
{
    // Zero width, bidirectional controls (Unicode annex 9), soft hyphen, line and paragraph separator, byte order mark inside a text.
    private const string Unseen =
        "\u00AD\u061C\u180E\u200B\u200C\u200D\u200E\u200F\u2028\u2029\u202A\u202B\u202C\u202D\u202E\u2060\u2061\u2062\u2063\u2064\u2066\u2067\u2068\u2069\uFEFF";

    // Joiners belong to the spelling of some languages, so they are asked about and not refused.
    private const string Joiners = "\u200C\u200D";

    // The lowest character that may be odd, apart from the controls.
    private const char LowestUnseen = '\u00AD';

    /// <summary>The index of the next odd character, or -1.</summary>
    public static int Next(ReadOnlySpan<char> text)
    {
        // A plain loop: the framework's search for many characters has to be compiled at each start, which costs more than it saves.
        for (var i = 0; i < text.Length; i++)
        {
            var c = text[i];
            if (c is >= ' ' and <= '~' or '\n' or '\r' or '\t')
                continue;
            if (char.IsControl(c) || (c >= LowestUnseen && Unseen.Contains(c)))
                return i;
        }

        return -1;
    }

    /// <summary>True for a control character, false for one that is merely not seen.</summary>
    public static bool IsControl(char character) => char.IsControl(character);

    /// <summary>True for the two characters that some languages need in a word.</summary>
    public static bool IsJoiner(char character) => Joiners.Contains(character);

    /// <summary>The character as people look it up: <c>U+202E</c>.</summary>
    public static string Name(char character) => "U+" + ((int)character).ToString("X4", CultureInfo.InvariantCulture);
}

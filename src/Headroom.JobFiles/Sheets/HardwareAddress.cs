namespace Headroom.JobFiles.Sheets;

/// <summary>Hardware addresses in all the ways people write them.</summary>
internal static class HardwareAddress
{
    private const int Digits = 12;

    /// <summary>The address as six pairs with colons; null when the text is none.</summary>
    public static string? Plain(string text)
    {
        var digits = Bare(text);
        if (digits.Length != Digits || !digits.All(char.IsAsciiHexDigit) || !HasUsualMarks(text))
            return null;
        return string.Join(':', Enumerable.Range(0, 6).Select(pair => digits.Substring(2 * pair, 2))).ToLowerInvariant();
    }

    /// <summary>True when the text would be an address with zeros in front of it: a spreadsheet program drops those of a number.</summary>
    public static bool LacksZero(string text) =>
        text.Length is >= 8 and < Digits && text.All(char.IsAsciiDigit);

    /// <summary>The text filled up with zeros.</summary>
    public static string WithZeros(string text) => text.PadLeft(Digits, '0');

    private static string Bare(string text) =>
        string.Concat(text.Where(character => character is not (':' or '-' or '.' or ' ')));

    // Marks stand between pairs, triples or fours and nowhere else: 02:00:5e..., 0200.5e10..., 02005e-100001.
    private static bool HasUsualMarks(string text)
    {
        var parts = text.Trim().Split([':', '-', '.', ' ']);
        return parts.Length is 1 or 2 or 3 or 4 or 6 && parts.All(part => part.Length == Digits / parts.Length);
    }
}

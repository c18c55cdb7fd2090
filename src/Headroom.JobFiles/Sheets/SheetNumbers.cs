using System.Text;

namespace Headroom.JobFiles.Sheets;

/// <summary>Knows the decimal sign of a sheet, and writes its numbers with a point.</summary>
internal sealed class SheetNumbers
{
    public const string Comma = "comma";
    public const string Point = "point";

    private readonly bool _stated;

    private SheetNumbers(char? sign, string why, bool stated) => (Sign, Why, _stated) = (sign, why, stated);

    /// <summary>The decimal sign; null when no number has one.</summary>
    public char? Sign { get; }

    /// <summary>How it is known.</summary>
    public string Why { get; }

    /// <summary>The word for the sign.</summary>
    public string Word => Sign switch { ',' => Comma, '.' => Point, _ => "none" };

    /// <summary>Finds the decimal sign by the numbers that can be read in one way only.</summary>
    /// <param name="cells">The texts of all cells with numbers.</param>
    /// <param name="stated">The word for the sign that the person named; null to see for oneself.</param>
    /// <param name="separator">What stands between the cells.</param>
    public static SheetNumbers Find(IEnumerable<string> cells, string? stated, char separator)
    {
        if (stated is not null)
            return new(stated == Comma ? ',' : '.', "as you say", stated: true);
        var (commas, points) = (0, 0);
        foreach (var cell in cells)
        {
            foreach (var token in Tokens(cell))
            {
                var sign = Evident(token);
                commas += sign == ',' ? 1 : 0;
                points += sign == '.' ? 1 : 0;
            }
        }

        if (commas > 0 || points > 0)
            return commas > points ? new(',', By(commas, points), false) : new('.', By(points, commas), false);
        return separator == ',' ? new('.', "since commas stand between the cells", false) : new(null, "no number tells", false);
    }

    /// <summary>The text with its numbers as a job file has them.</summary>
    /// <returns>The text, or null with the code of what is wrong and the two ways in which the number could be read.</returns>
    public (string? Text, FindingCode? Slip, string Ways) Plain(string text)
    {
        var plain = new StringBuilder();
        var from = 0;
        foreach (var token in Tokens(text))
        {
            var at = text.IndexOf(token, from, StringComparison.Ordinal);
            var (number, slip) = Number(token);
            if (number is null)
                return (null, slip, Ways(token));
            plain.Append(text, from, at - from).Append(number);
            from = at + token.Length;
        }

        return (plain.Append(text, from, text.Length - from).ToString(), null, "");
    }

    private (string? Number, FindingCode? Slip) Number(string token)
    {
        if (token.IndexOfAny([',', '.']) < 0)
            return (token, null);
        if (Evident(token) is { } sign)
            return sign == Sign ? (Written(token, sign), null) : (null, SheetCodes.MixedDecimals);
        var mark = token.Contains(',') ? ',' : '.';
        if (Sign == mark)
            return (Written(token, mark), null);
        return _stated ? (Written(token, Sign!.Value), null) : (null, SheetCodes.AmbiguousNumber);
    }

    private static string Written(string token, char sign) =>
        token.Replace((sign == ',' ? '.' : ',').ToString(), "", StringComparison.Ordinal).Replace(',', '.');

    private static string Ways(string token)
    {
        var mark = token.Contains(',') ? ',' : '.';
        var digits = token.Replace(mark.ToString(), "", StringComparison.Ordinal);
        return $"{token.Replace(mark, '.')} or {digits}";
    }

    // The decimal sign that a number can only have; null when it has none, or may have either.
    private static char? Evident(string token)
    {
        var (comma, point) = (token.LastIndexOf(','), token.LastIndexOf('.'));
        if (comma < 0 && point < 0)
            return null;
        if (comma >= 0 && point >= 0)
            return comma > point ? ',' : '.';
        var (mark, last) = comma >= 0 ? (',', comma) : ('.', point);
        if (token.IndexOf(mark) != last)
            return mark == ',' ? '.' : ',';
        var isGroup = last is >= 1 and <= 3 && token.Length - last == 4 && token[0] != '0';
        return isGroup ? null : mark;
    }

    // Digits with commas and points between or before them; two points are the sign of a range.
    private static IEnumerable<string> Tokens(string text)
    {
        for (var at = 0; at < text.Length; at++)
        {
            var end = at;
            while (end < text.Length && (char.IsAsciiDigit(text[end]) || (IsMark(text, end) && end + 1 < text.Length && char.IsAsciiDigit(text[end + 1]))))
                end++;
            if (end == at)
                continue;
            yield return text[at..end];
            at = end;
        }
    }

    private static bool IsMark(string text, int at) =>
        text[at] is ',' or '.' && (at == 0 || text[at - 1] is not '.') && (at + 1 >= text.Length || text[at + 1] is not '.');

    private static string By(int many, int few) => $"by {many} {(many == 1 ? "number" : "numbers")}" + (few > 0 ? $", against {few}" : "");
}

using System.Globalization;
using System.Buffers;

namespace Headroom.Cli.Csv;

/// <summary>One cell of a CSV file.</summary>
internal static class CsvCell
{
    private static readonly SearchValues<char> Special = SearchValues.Create(",\"\r\n");

    /// <summary>A text. Where a spreadsheet would take it for a formula, an apostrophe stands before it.</summary>
    public static string Text(string text)
    {
        if (text.Length > 0 && text[0] is '=' or '+' or '-' or '@' or '\t' or '\r' or '\n' or '\0' or '\uFF1D' or '\uFF0B' or '\uFF0D' or '\uFF20')
            text = "'" + text;
        return text.AsSpan().ContainsAny(Special) ? $"\"{text.Replace("\"", "\"\"")}\"" : text;
    }

    /// <summary>A number as worked out; empty when it is not known or no number.</summary>
    public static string Number(double? value) =>
        value is { } number && double.IsFinite(number) ? number.ToString("R", CultureInfo.InvariantCulture) : "";
}

using System.Buffers;
using System.Globalization;
using System.Text;
using Headroom.Domain.Tables;

namespace Headroom.Documents.Workbooks;

/// <summary>Writes a table as comma-separated values: for programs, and for people who know what a spreadsheet program makes of it.</summary>
/// <remarks>
/// Source: RFC 4180 for rows and quotation marks; texts that a spreadsheet program would take for a formula get an apostrophe in front
/// (CSV injection, the signs of the application security guidelines, with their full-width forms). Numbers are never touched.
/// </remarks>
public static class BookCsv
{
    private const string Formula = "=+-@\t\r\n\0\uFF1D\uFF0B\uFF0D\uFF20";

    private static readonly SearchValues<char> Special = SearchValues.Create(",\"\r\n");

    /// <summary>The table with its headings, in UTF-8 with a byte order mark, which spreadsheet programs want.</summary>
    /// <param name="table">The table.</param>
    public static byte[] Write(BookTable table)
    {
        var text = new StringBuilder("\uFEFF");
        Row(text, table.Columns.Select(column => Text(column.Heading)));
        foreach (var row in table.Rows)
            Row(text, row.Select(Cell));
        return Encoding.UTF8.GetBytes(text.ToString());
    }

    /// <summary>A text as a cell.</summary>
    /// <param name="text">The text.</param>
    public static string Text(string text)
    {
        if (text.Length > 0 && Formula.Contains(text[0]))
            text = "'" + text;
        return text.AsSpan().ContainsAny(Special) ? $"\"{text.Replace("\"", "\"\"", StringComparison.Ordinal)}\"" : text;
    }

    private static string Cell(object? value) => value switch
    {
        null => "",
        double number => number.ToString("R", CultureInfo.InvariantCulture),
        decimal amount => amount.ToString(CultureInfo.InvariantCulture),
        DateOnly day => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture),
        _ => Text(value.ToString() ?? ""),
    };

    private static void Row(StringBuilder text, IEnumerable<string> cells) => text.AppendJoin(',', cells).Append("\r\n");
}

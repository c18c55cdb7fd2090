using System.Globalization;
using DocumentFormat.OpenXml.Packaging;
using DocumentFormat.OpenXml.Spreadsheet;
using Headroom.Domain.Findings;
using Headroom.JobFiles.Sheets;

namespace Headroom.JobFiles.Amending;

/// <summary>The sheets of a workbook as cells, each with its place.</summary>
/// <param name="book">The workbook, open.</param>
/// <param name="file">The name that findings give it.</param>
internal sealed class BookSheets(SpreadsheetDocument book, string file)
{
    // The formats that every workbook has for days and times (ECMA-376 part 1, 18.8.30).
    private static readonly HashSet<uint> DayFormats = [14, 15, 16, 17, 18, 19, 20, 21, 22, 27, 28, 29, 30, 31, 32, 33, 34, 35, 36, 45, 46, 47, 50, 51, 52, 53, 54, 55, 56, 57, 58];

    private readonly IReadOnlyList<string> _shared = [.. book.WorkbookPart?.SharedStringTablePart?.SharedStringTable?.Elements<SharedStringItem>().Select(Text) ?? []];
    private readonly List<bool> _isDay = Days(book.WorkbookPart?.WorkbookStylesPart?.Stylesheet);

    /// <summary>The names of the sheets, in order, with what is in each; null for one that holds no cells, such as a chart.</summary>
    public IEnumerable<(string Name, Worksheet? Sheet)> All() => (book.WorkbookPart?.Workbook?.Descendants<Sheet>() ?? [])
        .Select(sheet => (sheet.Name?.Value ?? "", sheet.Id?.Value is { } id && book.WorkbookPart!.TryGetPartById(id, out var part) ? (part as WorksheetPart)?.Worksheet : null));

    /// <summary>The rows of a sheet in which anything stands.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="sheet">What is in it.</param>
    public IEnumerable<IReadOnlyList<BackCell>> Rows(string name, Worksheet sheet)
    {
        var place = $"{file}, sheet {name}";
        var number = 0;
        foreach (var row in sheet.Descendants<Row>())
        {
            number = (int?)row.RowIndex?.Value ?? number + 1;
            var cells = new List<BackCell>();
            foreach (var cell in row.Elements<Cell>())
            {
                var column = Column(cell.CellReference?.Value) ?? cells.Count;
                while (cells.Count < column)
                    cells.Add(Of("", null, (place, number, cells.Count)));
                var (text, value) = Value(cell);
                cells.Add(Of(text, value, (place, number, column)));
            }

            if (cells.Exists(cell => cell.Cell.Text.Length > 0))
                yield return cells;
        }
    }

    private static BackCell Of(string text, double? number, (string Place, int Row, int Column) at) =>
        new(new SheetCell(text, new Place(at.Place, at.Row, at.Column + 1), SheetCell.Letters(at.Column) + at.Row.ToString(CultureInfo.InvariantCulture)), number);

    private (string Text, double? Number) Value(Cell cell)
    {
        var raw = cell.CellValue?.Text ?? "";
        var type = cell.DataType?.Value ?? CellValues.Number;
        if (type == CellValues.InlineString)
            return (cell.InlineString is { } inline ? Text(inline).Trim() : "", null);
        if (type == CellValues.SharedString)
            return (int.TryParse(raw, NumberStyles.None, CultureInfo.InvariantCulture, out var index) && index < _shared.Count ? _shared[index].Trim() : "", null);
        if (type == CellValues.Boolean)
            return (raw == "1" ? "TRUE" : "FALSE", null);
        if (type != CellValues.Number || !double.TryParse(raw, NumberStyles.Float, CultureInfo.InvariantCulture, out var number))
            return (raw.Trim(), null);
        if (cell.StyleIndex?.Value is { } style && style < _isDay.Count && _isDay[(int)style] && number is > 0 and < 2_958_466)
            return (DateTime.FromOADate(number).ToString("yyyy-MM-dd", CultureInfo.InvariantCulture), null);
        return (number.ToString("R", CultureInfo.InvariantCulture), number);
    }

    // Text in several letterings, without the readings that stand above some scripts.
    private static string Text(DocumentFormat.OpenXml.OpenXmlElement item) =>
        string.Concat(item.ChildElements.Select(child => child switch { Text text => text.Text, Run run => string.Concat(run.Elements<Text>().Select(text => text.Text)), _ => "" }));

    private static int? Column(string? reference)
    {
        var column = 0;
        foreach (var letter in (reference ?? "").TakeWhile(char.IsAsciiLetter))
            column = Math.Min(column * 26 + char.ToUpperInvariant(letter) - 'A' + 1, 20_000);
        return column == 0 ? null : column - 1;
    }

    private static List<bool> Days(Stylesheet? styles)
    {
        var own = (styles?.NumberingFormats?.Elements<NumberingFormat>() ?? []).Where(format => format.NumberFormatId is not null).ToDictionary(format => format.NumberFormatId!.Value, format => IsDay(format.FormatCode?.Value ?? ""));
        return [.. (styles?.CellFormats?.Elements<CellFormat>() ?? []).Select(format => format.NumberFormatId?.Value is { } id && (own.TryGetValue(id, out var day) ? day : DayFormats.Contains(id)))];
    }

    // Outside quotation marks and brackets, a letter of year, month, day or hour tells a day or time.
    private static bool IsDay(string format)
    {
        var (quoted, bracketed) = (false, false);
        foreach (var letter in format)
        {
            quoted ^= letter == '"';
            bracketed = letter == '[' || (bracketed && letter != ']');
            if (!quoted && !bracketed && letter is 'y' or 'd' or 'h' or 'Y' or 'D' or 'H')
                return true;
        }

        return false;
    }
}

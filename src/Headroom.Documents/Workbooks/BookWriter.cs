using Headroom.Domain.Tables;
using SpreadCheetah;
using SpreadCheetah.Metadata;
using SpreadCheetah.Styling;
using SpreadCheetah.Tables;
using SpreadCheetah.Worksheets;

namespace Headroom.Documents.Workbooks;

/// <summary>Writes tables as a workbook (Office Open XML).</summary>
public static class BookWriter
{
    private const double LeastWidth = 7;
    private const double MostWidth = 60;

    // Room for the arrow that a table has in each heading.
    private const double HeadingRoom = 4;

    /// <summary>Writes them, a sheet each.</summary>
    /// <param name="tables">The tables; their names differ.</param>
    /// <param name="about">What the workbook says about itself.</param>
    /// <returns>The bytes; the same for the same tables and day, always.</returns>
    public static byte[] Write(IReadOnlyList<BookTable> tables, BookAbout about)
    {
        using var stream = new MemoryStream();
        // Into memory nothing is ever waited for.
        WriteAsync(tables, about, stream).GetAwaiter().GetResult();
        return BookParts.Finished(stream.ToArray(), tables, about);
    }

    private static async Task WriteAsync(IReadOnlyList<BookTable> tables, BookAbout about, Stream stream)
    {
        // Some programs put a cell without its reference nowhere, though the standard leaves it to the writer (ECMA-376 part 1, 18.3.1.4).
        var options = new SpreadCheetahOptions { WriteCellReferenceAttributes = true, PreserveStringWhitespace = true, DocumentProperties = new DocumentProperties { Title = about.Title, Author = about.Author.Length > 0 ? about.Author : null } };
        await using var book = await Spreadsheet.CreateNewAsync(stream, options).ConfigureAwait(false);
        var styles = new Dictionary<CellSort, StyleId?>
        {
            [CellSort.Text] = book.AddStyle(new Style { Format = NumberFormat.Custom("@") }),
            [CellSort.Number] = null,
            [CellSort.Money] = book.AddStyle(new Style { Format = NumberFormat.Custom("#,##0.00") }),
            [CellSort.Day] = book.AddStyle(new Style { Format = NumberFormat.Custom("yyyy\\-mm\\-dd") }),
        };
        var head = book.AddStyle(new Style { Font = { Bold = true } });
        foreach (var table in tables)
        {
            await book.StartWorksheetAsync(table.Name, Sheet(table)).ConfigureAwait(false);
            book.StartTable(new SpreadCheetah.Tables.Table(TableStyle.None, table.Name.Replace(' ', '_') + "_table") { BandedRows = false });
            await book.AddHeaderRowAsync(table.Columns.Select(column => column.Heading).ToArray(), head).ConfigureAwait(false);
            foreach (var row in table.Rows)
                await book.AddRowAsync(row.Select((value, i) => CellOf(value, styles[table.Columns[i].Sort])).ToArray()).ConfigureAwait(false);
            // A table must have a row below its headings.
            if (table.Rows.Count == 0)
                await book.AddRowAsync(table.Columns.Select(_ => new Cell("")).ToArray()).ConfigureAwait(false);
            await book.FinishTableAsync().ConfigureAwait(false);
        }

        await book.FinishAsync().ConfigureAwait(false);
    }

    private static WorksheetOptions Sheet(BookTable table)
    {
        var sheet = new WorksheetOptions { FrozenRows = 1 };
        for (var i = 0; i < table.Columns.Count; i++)
        {
            var cells = table.Rows.Select(row => Shown(row[i]).Length).DefaultIfEmpty().Max();
            sheet.Column(i + 1).Width = Math.Clamp(Math.Max(cells + 2, table.Columns[i].Heading.Length + HeadingRoom), LeastWidth, MostWidth);
        }

        return sheet;
    }

    private static string Shown(object? value) => value switch { null => "", DateOnly => "2026-11-25", double number => Math.Round(number, 4).ToString(System.Globalization.CultureInfo.InvariantCulture), _ => value.ToString() ?? "" };

    private static Cell CellOf(object? value, StyleId? style) => value switch
    {
        null => new Cell((string?)null, style),
        double number => new Cell(number, style),
        decimal amount => new Cell(amount, style),
        DateOnly day => new Cell(day.ToDateTime(TimeOnly.MinValue), style),
        _ => new Cell(value.ToString(), style),
    };
}

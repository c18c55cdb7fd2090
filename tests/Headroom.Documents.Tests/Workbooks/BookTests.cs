using System.Globalization;
using System.IO.Compression;
using System.Text;
using DocumentFormat.OpenXml;
using DocumentFormat.OpenXml.Packaging;
using DocumentFormat.OpenXml.Spreadsheet;
using DocumentFormat.OpenXml.Validation;
using Headroom.Documents.Papers;
using Headroom.Documents.Workbooks;
using Headroom.Domain.Tables;

namespace Headroom.Documents.Tests.Workbooks;

/// <summary>Workbooks, read back with a library that did not write them.</summary>
public sealed class BookTests
{
    private static readonly BookAbout About = new("Schedules", "Reed & Daughters", "Cobnut & Barn", new DateOnly(2026, 11, 25), Letter: false);
    private static readonly PaperInput Barn = Studied.Example("barn-vets");

    // What spreadsheet programs make of network data when it is not text: reference values 9.1.
    private static readonly string[] Treacherous =
        ["0012", "12E45", "00E1", "12345678901234567890", "1:2", "3/4", "1/2/3", "TRUE", "=1+1", "+44 20 7946 0000", "-3 dB", "@SUM(A1)", "\t=1", " =1", "a,b", "say \"hi\"", "a\nb", "MAR1", "10.0.0.1", "<&>'", "Ω ² ü", "漢字"];

    [Fact]
    public void Text_stays_text_letter_for_letter()
    {
        var table = new BookTable("traps", [new("text"), new("number", CellSort.Number, "m")], [.. Treacherous.Select(text => (IReadOnlyList<object?>)[text, -3.5])]);
        using var book = Open([table]);
        var cells = Cells(book, "traps");
        for (var i = 0; i < Treacherous.Length; i++)
        {
            var cell = cells[$"A{i + 2}"];
            Assert.Equal((CellValues.InlineString, Treacherous[i]), (cell.DataType!.Value, cell.InnerText));
            Assert.Empty(cell.Elements<CellFormula>());
            Assert.Equal(("-3.5", true), (cells[$"B{i + 2}"].CellValue!.Text, cells[$"B{i + 2}"].DataType is null || cells[$"B{i + 2}"].DataType! == CellValues.Number));
        }
    }

    [Fact]
    public void Every_table_of_an_example_reads_back_cell_by_cell()
    {
        var tables = BookTables.Of(Barn);
        Assert.Equal(["cabling", "ports", "subnets", "addresses", "power states", "power ports", "standby", "sound", "pick list", "bill of materials", "ledger", "drops", "endpoints", "patching"], tables.Select(table => table.Name));
        using var book = Open(tables);
        foreach (var table in tables)
        {
            var cells = Cells(book, table.Name);
            for (var c = 0; c < table.Columns.Count; c++)
            {
                Assert.Equal(table.Columns[c].Heading, cells[Name(c, 1)].InnerText);
                for (var r = 0; r < table.Rows.Count; r++)
                    Assert.Equal(Wanted(table.Rows[r][c]), cells.TryGetValue(Name(c, r + 2), out var cell) ? cell.InnerText : "");
            }
        }
    }

    // An independent program reads the file as a person's spreadsheet program would.
    [Fact]
    public void Another_program_reads_every_row_of_every_sheet()
    {
        Assert.SkipUnless(Labels.Outside.Has("ssconvert"), "ssconvert is not installed (Debian package gnumeric)");
        var folder = Directory.CreateTempSubdirectory("headroom-book-");
        try
        {
            var (file, tables) = (Path.Combine(folder.FullName, "book.xlsx"), BookTables.Of(Barn));
            File.WriteAllBytes(file, BookWriter.Write(tables, About));
            Assert.Equal(0, Headroom.Tests.Run.Process(new Headroom.Tests.ProcessStart("ssconvert", ["-S", file, Path.Combine(folder.FullName, "%n.csv")])).ExitCode);
            for (var i = 0; i < tables.Count; i++)
            {
                var lines = File.ReadAllLines(Path.Combine(folder.FullName, $"{i}.csv"));
                Assert.Equal(tables[i].Rows.Count + 1, lines.Length);
                Assert.Contains(tables[i].Columns[0].Heading, lines[0], StringComparison.Ordinal);
                Assert.StartsWith(Wanted(tables[i].Rows[0][0]).Trim('"'), lines[1].TrimStart('"'), StringComparison.Ordinal);
            }
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    [Fact]
    public void A_workbook_has_no_fault_against_the_standard_and_prints_with_its_headings()
    {
        using var book = Open(BookTables.Of(Barn));
        Assert.Empty(new OpenXmlValidator(FileFormatVersions.Office2019).Validate(book, TestContext.Current.CancellationToken).Select(error => $"{error.Part?.Uri} {error.Path?.XPath}: {error.Description}"));
        Assert.Equal(14, book.WorkbookPart!.Workbook!.DefinedNames!.Count());
        foreach (var sheet in book.WorkbookPart.WorksheetParts)
        {
            var pane = sheet.Worksheet!.Descendants<Pane>().Single();
            Assert.Equal((1.0, PaneStateValues.Frozen), (pane.VerticalSplit!.Value, pane.State!.Value));
            var setup = sheet.Worksheet.Descendants<PageSetup>().Single();
            Assert.Equal((9u, 0u, OrientationValues.Landscape), (setup.PaperSize!.Value, setup.FitToHeight!.Value, setup.Orientation!.Value));
            Assert.Contains("Cobnut && Barn", sheet.Worksheet.Descendants<OddFooter>().Single().Text, StringComparison.Ordinal);
            Assert.All(sheet.Worksheet.Descendants<Column>(), column => Assert.InRange(column.Width!.Value, 7, 60));
            Assert.Single(sheet.TableDefinitionParts);
            // Without it a spreadsheet program showed empty sheets: ssconvert of gnumeric 1.12.55.
            Assert.All(sheet.Worksheet.Descendants<Row>(), row => Assert.All(row.Elements<Cell>().Select((cell, c) => (cell, c)), one => Assert.Equal(Name(one.c, (int)row.RowIndex!.Value), one.cell.CellReference?.Value)));
        }
    }

    [Fact]
    public void The_same_tables_are_the_same_bytes()
    {
        var first = BookWriter.Write(BookTables.Of(Barn), About);
        Thread.Sleep(2100);
        Assert.Equal(first, BookWriter.Write(BookTables.Of(Barn), About));
    }

    [Fact]
    public void Every_port_stands_on_one_row_and_every_cable_on_one()
    {
        var ports = BookTables.Of(Barn).Single(table => table.Name == "ports");
        Assert.Equal(Barn.Results.Bound.Switches.Sum(unit => unit.Model.Ports.Max(group => group.Last)), ports.Rows.Select(row => $"{row[0]}/{row[1]}").Distinct().Count());
        Assert.Equal(Barn.Job.Survey.Drops.Select(drop => drop.Id), BookTables.Of(Barn).Single(table => table.Name == "cabling").Rows.Select(row => row[0]));
    }

    [Fact]
    public void Nothing_inside_stands_in_any_part()
    {
        using var zip = new ZipArchive(new MemoryStream(BookWriter.Write(BookTables.Of(Barn), About)));
        var text = string.Concat(zip.Entries.Select(entry => new StreamReader(entry.Open(), Encoding.UTF8).ReadToEnd())) + string.Concat(BookTables.Of(Barn).Select(table => Encoding.UTF8.GetString(BookCsv.Write(table))));
        var money = Barn.Results.Money!;
        var prices = money.Lines.Select(line => line.Net).OfType<decimal>().ToHashSet();
        // The prices are there: else this would look in the wrong place.
        Assert.Contains("421.62", text, StringComparison.Ordinal);
        foreach (var cost in money.Lines.Select(line => line.Cost).OfType<decimal>().Append(money.Cost).Where(cost => cost > 99.99m && !prices.Contains(cost)).Select(cost => cost.ToString("F2", CultureInfo.InvariantCulture)))
            Assert.DoesNotContain(cost, text, StringComparison.Ordinal);
        Assert.All(Barn.Ledger.Entries.Where(entry => entry.Inside), entry => Assert.DoesNotContain($">{entry.Id}<", text, StringComparison.Ordinal));
        Assert.DoesNotContain("margin", text.Replace("pageMargins", "", StringComparison.Ordinal), StringComparison.OrdinalIgnoreCase);
    }

    // Bytes of the reference values 9.1: neutralise, then quote.
    [Theory]
    [InlineData("=1+1", "'=1+1")]
    [InlineData("+44 20 7946 0000", "'+44 20 7946 0000")]
    [InlineData("@SUM(A1)", "'@SUM(A1)")]
    [InlineData("\t=1", "'\t=1")]
    [InlineData("\r=1", "\"'\r=1\"")]
    [InlineData("=HYPERLINK(\"http://x\",\"y\")", "\"'=HYPERLINK(\"\"http://x\"\",\"\"y\"\")\"")]
    [InlineData("a,b", "\"a,b\"")]
    [InlineData("say \"hi\"", "\"say \"\"hi\"\"\"")]
    [InlineData("a\nb", "\"a\nb\"")]
    [InlineData(" =1", " =1")]
    [InlineData("\uFF1D1", "'\uFF1D1")]
    [InlineData("-3 dB", "'-3 dB")]
    public void A_text_in_CSV_is_no_formula(string text, string bytes) => Assert.Equal(bytes, BookCsv.Text(text));

    [Fact]
    public void A_number_in_CSV_is_a_number_and_a_day_a_day()
    {
        var table = new BookTable("t", [new("a", CellSort.Number, "m"), new("b", CellSort.Day), new("c")], [[-3.5, new DateOnly(2026, 11, 25), null]]);
        Assert.Equal("\uFEFFa [m],b,c\r\n-3.5,2026-11-25,\r\n", Encoding.UTF8.GetString(BookCsv.Write(table)));
    }

    private static SpreadsheetDocument Open(IReadOnlyList<BookTable> tables) => SpreadsheetDocument.Open(new MemoryStream(BookWriter.Write(tables, About)), isEditable: false);

    // The library leaves out where a cell stands when they follow each other, which the standard allows.
    private static Dictionary<string, Cell> Cells(SpreadsheetDocument book, string sheet)
    {
        var id = book.WorkbookPart!.Workbook!.Descendants<Sheet>().Single(one => one.Name == sheet).Id!.Value!;
        var cells = new Dictionary<string, Cell>();
        var r = 0;
        foreach (var row in ((WorksheetPart)book.WorkbookPart.GetPartById(id)).Worksheet!.Descendants<Row>())
        {
            var (number, c) = (++r, 0);
            foreach (var cell in row.Elements<Cell>())
                cells[cell.CellReference?.Value ?? Name(c++, number)] = cell;
        }

        return cells;
    }

    private static string Name(int column, int row) => string.Create(CultureInfo.InvariantCulture, $"{(char)('A' + column)}{row}");

    private static string Wanted(object? value) => value switch { null => "", double number => number.ToString("R", CultureInfo.InvariantCulture), decimal amount => amount.ToString(CultureInfo.InvariantCulture), _ => value.ToString()! };
}

using DocumentFormat.OpenXml;
using DocumentFormat.OpenXml.Packaging;
using DocumentFormat.OpenXml.Spreadsheet;
using Headroom.Documents.Workbooks;
using Headroom.Domain.Findings;
using Headroom.Domain.Jobs;
using Headroom.Domain.Shown;
using Headroom.Domain.Tables;
using Headroom.JobFiles;

namespace Headroom.Documents.Tests.Workbooks;

public sealed class AmendTests
{
    private const string Barn = "barn-vets";

    private static readonly Domain.Catalogues.Catalogue Models = CatalogueFiles.ReadShipped().Value!;
    private static readonly BookAbout About = new("Schedules", "", "", new DateOnly(2026, 11, 25), Letter: false);

    public static TheoryData<string, bool> Examples => new()
    {
        { Barn, false }, { Barn, true }, { "one-desk", false }, { "school-wings", false }, { "school-wings", true }, { "print-shop", false },
    };

    [Theory, MemberData(nameof(Examples))]
    public void What_nobody_edited_changes_nothing_in_workbook_or_CSV(string example, bool imperial)
    {
        using var desk = new AmendDesk(example);
        var tables = desk.Tables(imperial);
        Nothing(desk.Amend(tables));
        foreach (var table in tables)
            Nothing(JobAmending.Read(desk.Job, new AmendPlan(desk.Put($"{table.Name}.csv", BookCsv.Write(table)), table.Name), Models));
        static void Nothing(AmendedJob amended) => Assert.Equal((0, 0, null), (amended.Findings.Count, amended.Changes.Count, amended.Text));
    }

    [Fact]
    public void Only_what_was_edited_differs_in_the_file()
    {
        using var desk = new AmendDesk(Barn);
        var amended = desk.Amend(desk.Edited(("drops", "K-01", "length", 15.5), ("drops", "K-15", "length", 61.0), ("drops", "K-21", "to", "passage"), ("endpoints", "ap-1", "model", "bulrush"), ("patching", "K-07", "port", 23.0), ("endpoints", "cam-1", "hardware", "02-00-5E-10-00-01")));
        Assert.DoesNotContain(amended.Findings, finding => finding.Severity == Severity.Error);
        Assert.Equal(
            [
                "+    K-01: {from: cupboard, to: reception, length: 15.5 m, cable: cat6-23, bundle: 12, by: beam-tray}",
                "+    K-15: {from: cupboard, to: kennels, cable: cat5e-24, ambient: 29 °C, bundle: 4, existing: yes, length: 61 m}   # goes into the wall behind the boxes; length not known",
                "+    K-21: {from: cupboard, to: passage, length: 24 m, cable: yard-24, ambient: 18 °C}      # beside the front door",
                "+    ap-1: {model: bulrush, drop: K-07}    # reception on a Saturday: forty people and their telephones",
                "+    cam-1: {model: sanderling, drop: K-22, hardware: 02-00-5E-10-00-01}",
                "+      K-07: sw-1/23                       # the access points and the moving camera first: they may want the stronger ports one day",
            ],
            Difference(amended).Where(line => line[0] == '+'));
        Assert.Equal(6, Difference(amended).Count(line => line[0] == '-'));
        Assert.Contains("drops K-01, length: 14 m becomes 15.5 m (D2)", amended.Changes);
    }

    [Fact]
    public void A_range_of_which_one_is_edited_is_written_apart_and_neighbours_stay_together()
    {
        using var desk = new AmendDesk("headroom: 1\njob: x\nsurvey:\n  spaces: {a: {kind: private office}}\n  drops:\n    K-01..K-06: {from: a, length: 9 m}   # six alike\n  endpoints:\n    p-1..p-3: {model: pipit, drop: K-01..K-03}\ndesigns:\n  d:\n    switches: {sw-1: {model: tarn}}\n    patch:\n      K-01..K-03: sw-1/1..3\n", isText: true);
        var amended = desk.Amend(desk.Edited(("drops", "K-03", "length", 11.0), ("endpoints", "p-2", "mode", "night"), ("patching", "K-02", "port", 7.0)));
        Assert.Equal(
            [
                "+    K-01..K-02: {from: a, length: 9 m}", "+    K-03: {from: a, length: 11 m}", "+    K-04..K-06: {from: a, length: 9 m}   # six alike",
                "+    p-1: {model: pipit, drop: K-01}", "+    p-2: {model: pipit, drop: K-02, mode: night}", "+    p-3: {model: pipit, drop: K-03}",
                "+      K-01: sw-1/1", "+      K-02: sw-1/7", "+      K-03: sw-1/3",
            ],
            Difference(amended).Where(line => line[0] == '+'));
    }

    [Fact]
    public void A_new_row_is_a_new_thing_and_a_row_that_is_gone_is_asked_about()
    {
        using var desk = new AmendDesk(Barn);
        var tables = desk.Tables(imperial: false).Select(table => table.Name != "drops" ? table : table with { Rows = [.. table.Rows.Where(row => row[0] is not "K-02"), ["K-99", "cupboard", "reception", 12.0, "cat6-23", null, null, null]] }).ToList();
        var amended = desk.Amend(tables);
        Assert.Equal(("SHT032", Severity.Question), Assert.Single(amended.Findings.Select(finding => (finding.Code, finding.Severity))));
        Assert.Equal(["+    K-99: {from: cupboard, to: reception, length: 12 m, cable: cat6-23}"], Difference(amended));
        Assert.Contains("K-02", amended.Findings[0].Given, StringComparison.Ordinal);
    }

    [Fact]
    public void A_cell_that_was_emptied_is_not_known_and_a_cord_without_port_is_unplugged()
    {
        using var desk = new AmendDesk(Barn);
        var amended = desk.Amend(desk.Edited(("drops", "K-01", "length", null), ("patching", "K-07", "unit", null), ("patching", "K-07", "port", null)));
        Assert.Equal(["+    K-01: {from: cupboard, to: reception, length: unknown, cable: cat6-23, bundle: 12, by: beam-tray}"], Difference(amended).Where(line => line[0] == '+'));
        Assert.Contains(Difference(amended), line => line.StartsWith("-      K-07: sw-1/1 ", StringComparison.Ordinal));
        var job = JobFile.Parse(amended.Text!, "job.yaml", Models).Value!;
        Assert.Null(job.Survey.Drops.Single(drop => drop.Id == "K-01").Pieces[0].Length);
    }

    // Each at its cell, all in one go, and nothing to be written.
    [Fact]
    public void Findings_stand_at_sheet_and_cell_and_nothing_is_half_taken()
    {
        using var desk = new AmendDesk(Barn);
        var amended = desk.Amend(desk.Edited(("drops", "K-01", "length", 99_999.0), ("drops", "K-17", "length", 5.0), ("drops", "K-02", "to", "nowhere"), ("endpoints", "ap-1", "model", "no-such"), ("patching", "K-07", "port", 77.0)));
        Assert.Null(amended.Text);
        Assert.Equal(["drops:18:4", "drops:2:4", "drops:3:1", "endpoints:13:1", "patching:2:2"], amended.Findings.Where(finding => finding.Severity == Severity.Error).Select(finding => finding.At.ToString().Split("sheet ")[^1]).Distinct().Order(StringComparer.Ordinal));
    }

    // As spreadsheet programs of much of Europe save it: semicolons between the cells, commas in the numbers.
    [Fact]
    public void A_table_as_CSV_with_decimal_commas_is_taken_back()
    {
        using var desk = new AmendDesk(Barn);
        var file = desk.Put("drops.csv", System.Text.Encoding.UTF8.GetBytes("drop;length [m]\nK-01;14,00\nK-03;12,4968\nK-09;29,25\n"));
        var amended = JobAmending.Read(desk.Job, new AmendPlan(file, "drops"), Models);
        Assert.Equal(["drops K-09, length: 27 m becomes 29.25 m (B4)"], amended.Changes);
        Assert.Equal(["+    K-08: {from: cupboard, to: consult-1, length: 27 m, cable: cat6-23, bundle: 12, by: beam-tray}", "+    K-09: {from: cupboard, to: consult-1, length: 29.25 m, cable: cat6-23, bundle: 12, by: beam-tray}"], Difference(amended).Where(line => line[0] == '+'));
    }

    public static TheoryData<string, string, string, string> Refused => new()
    {
        { "drops", "K-17", "length", "SHT031" },     // in pieces
        { "drops", "K-01", "from", "SHT033" },       // cannot be without
        { "endpoints", "ap-1", "model", "SHT033" },
        { "patching", "K-07", "unit", "SHT033" },
    };

    [Theory, MemberData(nameof(Refused))]
    public void What_cannot_be_changed_by_itself_is_told(string table, string key, string column, string code)
    {
        using var desk = new AmendDesk(Barn);
        var amended = desk.Amend(desk.Edited((table, key, column, column == "length" ? 5.0 : null)));
        Assert.Equal((code, null), (Assert.Single(amended.Findings).Code, amended.Text));
    }

    [Fact]
    public void An_endpoint_that_is_counted_has_no_line_of_its_own()
    {
        using var desk = new AmendDesk("headroom: 1\njob: x\nsurvey:\n  endpoints:\n    3 x pipit:\n", isText: true);
        Assert.Equal("SHT031", Assert.Single(desk.Amend(desk.Edited(("endpoints", "pipit-2", "near", "desk"))).Findings).Code);
    }

    // As a spreadsheet program saves it: shared texts, a port that became a day, an error, a number with its unit typed behind it.
    [Fact]
    public void A_workbook_saved_by_another_program_is_read_with_what_that_program_made_of_it()
    {
        using var desk = new AmendDesk(Barn);
        var amended = JobAmending.Read(desk.Job, new AmendPlan(desk.Put("theirs.xlsx", Theirs()), null), Models);
        Assert.Equal(["SHT013 C2", "SHT017 D3"], amended.Findings.Where(finding => finding.Severity == Severity.Error).Select(finding => $"{finding.Code} {finding.Given.Split(' ')[0]}"));
        Assert.Contains("drops K-03, length: 12.5 m becomes 95 ft (D4)", amended.Changes);
        Assert.Null(amended.Text);
    }

    [Fact]
    public void What_is_no_workbook_is_refused()
    {
        using var desk = new AmendDesk(Barn);
        foreach (var (name, bytes) in new (string, byte[])[] { ("a.xlsx", "not a zip"u8.ToArray()), ("b.xlsx", BookWriter.Write([new BookTable("other", [new("a")], [["b"]])], About)), ("c.ods", [1]) })
            Assert.Equal("SHT030", Assert.Single(JobAmending.Read(desk.Job, new AmendPlan(desk.Put(name, bytes), null), Models).Findings).Code);
        Assert.Equal("FILE001", Assert.Single(JobAmending.Read(desk.Job, new AmendPlan(desk.Job + ".xlsx", null), Models).Findings).Code);
    }

    // Whatever lengths are typed, the job then says them, and its tables are those that were edited.
    [Fact]
    public void What_is_taken_back_is_what_the_tables_say_afterwards() => Gen.Select(Gen.Int[0, 20], Gen.Double[0.5, 300]).Array[1, 6].Sample(
        edits =>
        {
            using var desk = new AmendDesk(Barn);
            var drops = desk.Known.Survey.Drops.Where(drop => drop.Pieces.Count == 1).ToList();
            var told = edits.Select(edit => ("drops", drops[edit.Item1 % drops.Count].Id, "length", (object?)Math.Round(edit.Item2, 2))).DistinctBy(edit => edit.Id).ToArray();
            var tables = desk.Edited(told);
            var amended = desk.Amend(tables);
            var job = JobFile.Parse(amended.Text ?? File.ReadAllText(desk.Job), "job.yaml", Models).Value!;
            Assert.Equal(tables.Single(table => table.Name == "drops").Rows.Select(row => (row[0], row[3])), JobTables.Drops(job, new ShownUnits(false)).Rows.Select(row => (row[0], row[3])));
        },
        iter: 60);

    private static List<string> Difference(AmendedJob amended)
    {
        Assert.True(amended.Text is not null, string.Join('\n', amended.Findings));
        var (before, after) = (amended.Before!.Split('\n').ToList(), amended.Text!.Split('\n').ToList());
        return [.. after.Except(before).Select(line => "+" + line), .. before.Except(after).Select(line => "-" + line)];
    }

    private static byte[] Theirs()
    {
        using var stream = new MemoryStream();
        using (var book = SpreadsheetDocument.Create(stream, SpreadsheetDocumentType.Workbook))
        {
            var main = book.AddWorkbookPart();
            var shared = main.AddNewPart<SharedStringTablePart>();
            shared.SharedStringTable = new SharedStringTable(new[] { "drop", "from", "to", "length [m]", "K-01", "K-02", "K-03", "cupboard", "reception", "95 ft" }.Select(text => new SharedStringItem(new Text(text))));
            main.AddNewPart<WorkbookStylesPart>().Stylesheet = new Stylesheet(
                new Fonts(new Font()), new Fills(new Fill()), new Borders(new Border()), new CellStyleFormats(new CellFormat()), new CellFormats(new CellFormat(), new CellFormat { NumberFormatId = 14, ApplyNumberFormat = true }));
            var sheet = main.AddNewPart<WorksheetPart>();
            static Cell Of(string at, int index) => new() { CellReference = at, DataType = CellValues.SharedString, CellValue = new CellValue(index) };
            sheet.Worksheet = new Worksheet(new SheetData(
                new Row(Of("A1", 0), Of("B1", 1), Of("C1", 2), Of("D1", 3)),
                new Row(Of("A2", 4), Of("B2", 7), new Cell { CellReference = "C2", StyleIndex = 1, CellValue = new CellValue(46000) }, new Cell { CellReference = "D2", CellValue = new CellValue(14) }),
                new Row(Of("A3", 5), Of("B3", 7), Of("C3", 8), new Cell { CellReference = "D3", DataType = CellValues.Error, CellValue = new CellValue("#REF!") }),
                new Row(Of("A4", 6), Of("B4", 7), Of("C4", 8), Of("D4", 9))));
            main.Workbook = new Workbook(new Sheets(new Sheet { Name = "Drops", SheetId = 1, Id = main.GetIdOfPart(sheet) }));
        }

        return stream.ToArray();
    }

    [Fact]
    public void A_row_that_is_gone_is_taken_out_where_it_is_named_and_nothing_else_with_it()
    {
        using var desk = new AmendDesk(Barn);
        List<BookTable> Without(params (string Table, string Key)[] gone) => [.. desk.Tables(imperial: false).Select(table => table with { Rows = [.. table.Rows.Where(row => !gone.Contains((table.Name, (string)row[table.Name == "patching" ? 1 : 0]!)))] })];
        var told = desk.Amend(Without(("drops", "K-25"), ("drops", "K-24")), "K-25");
        Assert.Equal(("SHT032", Severity.Question), Assert.Single(told.Findings.Select(finding => (finding.Code, finding.Severity))));
        Assert.Contains("drops K-25 is taken out", told.Changes);
        Assert.Equal("-    K-25:", Assert.Single(Difference(told))[..10]);
        var whole = desk.Amend(Without(("drops", "K-16"), ("endpoints", "ap-3"), ("patching", "K-16")), "K-16", "ap-3");
        Assert.DoesNotContain(whole.Findings, finding => finding.Severity == Severity.Error);
        Assert.Equal(3, Difference(whole).Count);
        Assert.All(Difference(whole), line => Assert.StartsWith("-", line, StringComparison.Ordinal));
    }

    [Fact]
    public void A_thing_that_another_needs_stays_and_the_finding_says_which()
    {
        using var desk = new AmendDesk(Barn);
        var amended = desk.Amend([.. desk.Tables(imperial: false).Select(table => table with { Rows = [.. table.Rows.Where(row => table.Name != "drops" || row[0] is not "K-22")] })], "K-22");
        Assert.Null(amended.Text);
        Assert.Contains(amended.Findings, finding => finding.Severity == Severity.Error && finding.Given.Contains("K-22", StringComparison.Ordinal));
    }

    [Fact]
    public void What_is_named_to_be_taken_out_and_still_has_its_row_is_refused()
    {
        using var desk = new AmendDesk(Barn);
        var amended = desk.Amend(desk.Tables(imperial: false), "K-01", "no-such-thing");
        Assert.Null(amended.Text);
        Assert.Equal(["SHT034", "SHT034"], amended.Findings.Select(finding => finding.Code));
    }

    [Fact]
    public void One_of_a_range_is_taken_out_and_a_whole_range_too()
    {
        const string Text = "headroom: 1\njob: x\nsurvey:\n  spaces: {a: {kind: private office}}\n  drops:\n    K-01..K-03: {from: a, length: 9 m}\n    K-04: {from: a, length: 5 m}\n";
        using var desk = new AmendDesk(Text, isText: true);
        List<BookTable> Without(params string[] gone) => [.. desk.Tables(imperial: false).Select(table => table with { Rows = [.. table.Rows.Where(row => !gone.Contains(row[0]))] })];
        Assert.Equal(["+    K-01: {from: a, length: 9 m}", "+    K-03: {from: a, length: 9 m}", "-    K-01..K-03: {from: a, length: 9 m}"], Difference(desk.Amend(Without("K-02"), "K-02")));
        Assert.Equal(["-    K-01..K-03: {from: a, length: 9 m}"], Difference(desk.Amend(Without("K-01", "K-02", "K-03"), "K-01", "K-02", "K-03")));
    }

    private sealed class AmendDesk : IDisposable
    {
        private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("headroom-amend-");

        public AmendDesk(string example, bool isText = false)
        {
            Job = Path.Combine(_folder.FullName, "job.yaml");
            File.WriteAllText(Job, isText ? example : File.ReadAllText(Path.Combine(Repository.Root, "examples", example, "job.yaml")).ReplaceLineEndings("\n"));
            if (!isText)
            {
                foreach (var beside in Directory.GetFiles(Path.Combine(Repository.Root, "examples", example)).Where(file => !file.EndsWith("job.yaml", StringComparison.Ordinal)))
                    File.Copy(beside, Path.Combine(_folder.FullName, Path.GetFileName(beside)));
            }

            Known = JobFile.Read(Job, Models).Value!;
        }

        public string Job { get; }

        public Job Known { get; }

        public IReadOnlyList<BookTable> Tables(bool imperial) =>
            JobTables.All(Known, Known.Designs.Count == 0 ? null : DesignLineage.Whole(Known, Known.Designs[0].Id), new ShownUnits(imperial));

        public List<BookTable> Edited(params (string Table, string Key, string Column, object? Value)[] edits) => [.. Tables(imperial: false).Select(table =>
        {
            var key = table.Name == "patching" ? 1 : 0;
            return table with
            {
                Rows = [.. table.Rows.Select(row => (IReadOnlyList<object?>)[.. row.Select((cell, c) => edits.Where(edit => edit.Table == table.Name && edit.Key.Equals(row[key]) && edit.Column == table.Columns[c].Name).Select(edit => (Told: true, edit.Value)).FirstOrDefault() is (true, var value) ? value : cell)])],
            };
        })];

        public AmendedJob Amend(IReadOnlyList<BookTable> tables, params string[] takeOut) => JobAmending.Read(Job, new AmendPlan(Put("book.xlsx", BookWriter.Write(tables, About)), null) { TakeOut = takeOut }, Models);

        public string Put(string name, byte[] bytes)
        {
            var file = Path.Combine(_folder.FullName, name);
            File.WriteAllBytes(file, bytes);
            return file;
        }

        public void Dispose() => _folder.Delete(recursive: true);
    }
}

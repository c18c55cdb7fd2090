using System.IO.Compression;
using DocumentFormat.OpenXml.Packaging;
using Headroom.Domain.Findings;
using Headroom.Domain.Tables;
using Headroom.JobFiles.Files;
using Headroom.JobFiles.Sheets;

namespace Headroom.JobFiles.Amending;

/// <summary>Reads edited tables: of a workbook the sheets that can be taken back, of a CSV file the one that it is.</summary>
/// <param name="slips">Takes the findings.</param>
internal sealed class BackReader(SheetSlips slips)
{
    private const int MostRows = 20_000;
    private const int MostColumns = 100;

    // A workbook is a zip: what it unpacks to is asked before anything is unpacked.
    private const long MostUnpacked = 64L * 1024 * 1024;

    /// <summary>The sheets of the workbook that are not read, since they are worked out and not written down.</summary>
    public List<string> NotRead { get; } = [];

    /// <summary>The tables; empty, with findings, when they cannot be read.</summary>
    /// <param name="file">The file, as the person named it.</param>
    /// <param name="kind">What it is; null to go by the names of its sheets.</param>
    public List<BackTable> Read(string file, string? kind)
    {
        if (!file.EndsWith(".xlsx", StringComparison.OrdinalIgnoreCase))
            return kind is null ? Refuse(file, "a file that is no workbook (.xlsx)", $"a workbook, or CSV with --as {Words.Or(JobTables.Names)}") : Csv(file, kind);
        if (!File.Exists(file) || new FileInfo(file).Length > TextFile.MostBytes)
        {
            slips.Take(TextFile.Read(file).Findings);
            return [];
        }

        try
        {
            using var stream = new FileStream(file, FileMode.Open, FileAccess.Read, FileShare.ReadWrite | FileShare.Delete);
            using (var zip = new ZipArchive(stream, ZipArchiveMode.Read, leaveOpen: true))
            {
                if (zip.Entries.Sum(entry => entry.Length) > MostUnpacked)
                    return Refuse(file, "a workbook that unpacks to more than 64 MiB", "one as it was written here");
            }

            stream.Position = 0;
            return Book(file, stream, kind);
        }
        catch (Exception reason) when (reason is not OutOfMemoryException)
        {
            return Refuse(file, "a file that cannot be read as a workbook", "a workbook (.xlsx) without a password");
        }
    }

    private List<BackTable> Book(string file, FileStream stream, string? kind)
    {
        var tables = new List<BackTable>();
        using var book = SpreadsheetDocument.Open(stream, isEditable: false);
        var sheets = new BookSheets(book, file);
        foreach (var (called, sheet) in sheets.All())
        {
            var name = JobTables.Names.FirstOrDefault(one => string.Equals(one, called.Trim(), StringComparison.OrdinalIgnoreCase));
            if (sheet is null || name is null || (kind is not null && kind != name))
                NotRead.Add(called);
            else if (Sheet($"{file}, sheet {called}", name, [.. sheets.Rows(called, sheet).Take(MostRows + 1)]) is { } table)
                tables.Add(table);
        }

        if (tables.Count == 0 && !slips.Stands)
            return Refuse(file, $"a workbook with the sheets {Words.Short(string.Join(", ", NotRead))}", $"a sheet called {Words.Or(JobTables.Names)}");
        return tables;
    }

    private BackTable? Sheet(string place, string name, IReadOnlyList<IReadOnlyList<BackCell>> rows)
    {
        if (rows.Count <= MostRows && rows.All(row => row.Count <= MostColumns))
            return Table(name, place, rows);
        slips.Refuse(SheetCodes.TooLarge, new Place(place, 1, 1), ($"{rows.Count} rows or more, of up to {rows.Max(row => row.Count)} cells", $"at most {MostRows} rows and {MostColumns} columns", "see whether it is the right sheet"));
        return null;
    }

    private List<BackTable> Csv(string file, string kind)
    {
        var loaded = TextFile.ReadAs(file, bytes => SheetEncoding.Decode(bytes.Span, file, null));
        slips.Take(loaded.Findings);
        if (loaded.Value is not { } text)
            return [];
        slips.Take(TextGuard.Characters(text.Text, new Place(file, 1, 1)));
        var found = SheetSeparator.Find(text.Text, null);
        if (found.Rival is { } rival)
            slips.Refuse(SheetCodes.Separator, new Place(file, 1, 1), SheetSeparator.Unclear(found.Sign, rival));
        if (slips.Stands || new SheetTableReader(text.Text, file, slips).Read(found.Sign, found.From, mayBeEmpty: true) is not { } table)
            return [];
        var rows = table.Rows.Where(row => !slips.RefuseExtra(row, table.Header.Count)).Select(row => (IReadOnlyList<BackCell>)[.. row.Cells.Select(cell => new BackCell(cell, null))]);
        return Table(kind, file, [[.. table.Header.Select(cell => new BackCell(cell, null))], .. rows]) is { } back ? [back] : [];
    }

    private BackTable? Table(string name, string place, IReadOnlyList<IReadOnlyList<BackCell>> rows)
    {
        if (rows.Count > 0)
            return new(name, rows[0], [.. rows.Skip(1)]);
        slips.Refuse(SheetCodes.NoHeader, new Place(place, 1, 1), ("a sheet in which nothing stands", "a line with the words that name the columns, and rows below it", "take the sheet out, or write it anew: headroom workbook"));
        return null;
    }

    private List<BackTable> Refuse(string file, string given, string allowed)
    {
        slips.Refuse(SheetCodes.NoBook, new Place(file, 0, 0), (given, allowed, "see whether it is the right file; headroom workbook writes one"));
        return [];
    }
}

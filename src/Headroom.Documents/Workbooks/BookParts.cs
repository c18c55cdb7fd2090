using System.Globalization;
using System.IO.Compression;
using System.Security;
using System.Text;
using System.Text.RegularExpressions;
using Headroom.Domain.Tables;

namespace Headroom.Documents.Workbooks;

/// <summary>Finishes a workbook: how it prints, which its library does not write, and no time of the clock, so that the same tables are the same bytes.</summary>
/// <remarks>Source: ECMA-376 part 1, 18.3.1 (order of the parts of a sheet), 18.2.5 (print titles), 18.3.1.46 (footers).</remarks>
internal static partial class BookParts
{
    // The first day that a zip can tell.
    private static readonly DateTimeOffset NoTime = new(1980, 1, 1, 0, 0, 0, TimeSpan.Zero);

    /// <summary>The finished workbook.</summary>
    public static byte[] Finished(byte[] book, IReadOnlyList<BookTable> tables, BookAbout about)
    {
        using var into = new MemoryStream();
        using (var from = new ZipArchive(new MemoryStream(book)))
        using (var to = new ZipArchive(into, ZipArchiveMode.Create, leaveOpen: true))
        {
            foreach (var entry in from.Entries)
            {
                using var reader = new StreamReader(entry.Open(), Encoding.UTF8);
                var copy = to.CreateEntry(entry.FullName, CompressionLevel.Optimal);
                copy.LastWriteTime = NoTime;
                using var writer = new StreamWriter(copy.Open(), new UTF8Encoding(encoderShouldEmitUTF8Identifier: false));
                writer.Write(Part(entry.FullName, reader.ReadToEnd(), tables, about));
            }
        }

        return into.ToArray();
    }

    private static string Part(string name, string xml, IReadOnlyList<BookTable> tables, BookAbout about) => name switch
    {
        "docProps/core.xml" => Time().Replace(xml, about.On.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture) + "T00:00:00Z"),
        "xl/workbook.xml" => xml.Replace("</sheets>", "</sheets>" + Titles(tables), StringComparison.Ordinal),
        _ when name.StartsWith("xl/worksheets/sheet", StringComparison.Ordinal) => Printed(xml, about),
        _ => xml,
    };

    // The headings on every printed page.
    private static string Titles(IReadOnlyList<BookTable> tables) =>
        "<definedNames>" + string.Concat(tables.Select((table, i) => string.Create(CultureInfo.InvariantCulture, $"<definedName name=\"_xlnm.Print_Titles\" localSheetId=\"{i}\">'{table.Name}'!$1:$1</definedName>"))) + "</definedNames>";

    // On its side, one page wide, as many pages as it takes.
    private static string Printed(string xml, BookAbout about)
    {
        var paper = about.Letter ? 1 : 9;
        var setup = string.Create(
            CultureInfo.InvariantCulture,
            $"<pageMargins left=\"0.5\" right=\"0.5\" top=\"0.6\" bottom=\"0.7\" header=\"0.3\" footer=\"0.3\"/><pageSetup paperSize=\"{paper}\" fitToHeight=\"0\" orientation=\"landscape\"/><headerFooter><oddFooter>{Footer(about)}</oddFooter></headerFooter>");
        var at = xml.IndexOf("<tableParts", StringComparison.Ordinal);
        xml = xml.Insert(at >= 0 ? at : xml.IndexOf("</worksheet>", StringComparison.Ordinal), setup);
        return Root().Replace(xml, "$0<sheetPr><pageSetUpPr fitToPage=\"1\"/></sheetPr>", 1);
    }

    private static string Footer(BookAbout about) => SecurityElement.Escape($"&L&8{about.Foot.Replace("&", "&&", StringComparison.Ordinal)} · &A&R&8page &P of &N");

    [GeneratedRegex(@"\d{4}-\d\d-\d\dT[0-9:.]+Z?")]
    private static partial Regex Time();

    [GeneratedRegex("<worksheet[^>]*>")]
    private static partial Regex Root();
}

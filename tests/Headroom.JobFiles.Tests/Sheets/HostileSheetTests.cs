using System.Text;
using Headroom.Domain.Findings;
using Headroom.JobFiles.Files;
using Headroom.JobFiles.Sheets;

namespace Headroom.JobFiles.Tests.Sheets;

/// <summary>Files that were made to hurt are refused, with little memory for their size.</summary>
public sealed class HostileSheetTests
{
    // The text itself, the cells' ends and the findings: so many bytes for each byte of the file, and some for what there is anyway.
    private const long BytesForEach = 40;
    private const long AnyWay = 8 * 1024 * 1024;

    public static TheoryData<string, string, string> Made => new()
    {
        { "a zero byte", "FILE006", "drop;room\nK-01;h\0ll\n" },
        { "nothing", "FILE005", "" },
        { "spaces only", "FILE005", " \n \n" },
        { "separators only", "SHT005", ";;;\n;;;\n" },
        { "headings only", "SHT005", "drop;room\n" },
        { "a quotation mark never closed", "SHT001", "drop;room\nK-01;\"hall\nK-02;hall\n" },
        { "a quotation mark inside a cell", "SHT001", "drop;room\nK-01;19\" hall\nK-02;hall\n" },
        { "a quotation mark never closed before much", "SHT001", "drop;room\nK-01;\"" + new string('x', 4_000_000) },
        { "a cell of four megabytes", "SHT002", "drop;room\nK-01;" + new string('x', 4_000_000) },
        { "a cell of four megabytes in quotation marks", "SHT002", "drop;room\nK-01;\"" + new string('x', 4_000_000) + "\"\n" },
        { "a million columns", "SHT002", string.Concat(Enumerable.Repeat("a;", 1_000_000)) + "\n1;2\n" },
        { "a row of a million cells", "SHT002", "drop;room\n" + new string(';', 1_000_000) + "\n" },
        { "a million rows", "SHT002", "drop;room\n" + string.Concat(Enumerable.Repeat("a;b\n", 1_000_000)) },
        { "a million quotation marks", "SHT002", "drop;room\n" + string.Concat(Enumerable.Repeat("\"\n", 500_000)) },
        { "characters that cannot be seen", "FILE010", "drop;room\nK-\u200B01;hall\n" },
        { "control characters", "FILE009", "drop;room\nK-\u000101;hall\n" },
    };

    [Theory, MemberData(nameof(Made))]
    public void It_is_refused_in_bounded_memory(string what, string code, string text)
    {
        var bytes = Encoding.UTF8.GetBytes(text);
        var before = GC.GetAllocatedBytesForCurrentThread();
        var sheet = SheetDesk.Read(SheetDesk.Plan("drops"), bytes);
        var spent = GC.GetAllocatedBytesForCurrentThread() - before;
        Assert.True(sheet.Stands && sheet.Findings.Any(finding => finding.Code == code), $"{what}: {string.Join('\n', sheet.Findings.Take(5))}");
        Assert.True(sheet.Findings.Count <= SheetSlips.MostListed + 1);
        Assert.True(spent <= AnyWay + BytesForEach * bytes.Length, $"{what}: {spent} bytes for {bytes.Length}");
    }

    [Theory]
    [InlineData(100_000_000)]
    [InlineData(1_000_000_000)]
    public void A_file_beyond_any_sheet_is_refused_before_anything_is_read(long size)
    {
        using var folder = new SheetFolder(("drops", ""));
        using (var file = File.Create(folder.PathOf("drops.csv")))
            file.SetLength(size);
        var before = GC.GetAllocatedBytesForCurrentThread();
        var read = SheetReader.Read(new SheetPlan(folder.PathOf("drops.csv"), "drops", Place.None), SheetDesk.Site);
        Assert.Equal("FILE004", Assert.Single(read.Findings).Code);
        Assert.True(GC.GetAllocatedBytesForCurrentThread() - before < 1_000_000);
    }

    [Fact]
    public void Just_the_largest_file_is_read_to_its_end_or_to_its_first_slip()
    {
        var text = "drop;room;length (m)\n" + string.Concat(Enumerable.Range(0, SheetTableReader.MostRows).Select(row => $"D{row};{new string('h', 300)};31\n"));
        Assert.True(text.Length < TextFile.MostBytes);
        Assert.Equal(SheetTableReader.MostRows, SheetDesk.Read("drops", text).Rows.All);
    }

    [Fact]
    public void Whatever_the_bytes_reading_ends_with_rows_or_a_finding() => Gen.Byte.Array[0, 300].Sample(
        bytes =>
        {
            var sheet = SheetDesk.Read(SheetDesk.Plan("drops"), bytes);
            return sheet.Entries.Count > 0 || sheet.Findings.Count > 0;
        },
        iter: Long.Samples(20_000));
}

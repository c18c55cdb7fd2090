using Headroom.Cli.Csv;
using Headroom.Cli.Tests.Sample;

namespace Headroom.Cli.Tests.Csv;

public sealed class LedgerCsvTests
{
    [Fact]
    public void The_rows_are_as_accepted() => Golden.Agrees("ledger.csv", LedgerCsv.Write([.. SampleLedger.Full.Entries.Take(6)]));

    [Fact]
    public void Every_row_ends_as_the_rfc_wants_and_has_the_cells_of_the_header()
    {
        var entries = SampleLedger.Full.Entries.Select(entry => entry with { Subject = "a, \"b\"\r\nc", What = "x", Question = null, Advice = [], Assumed = [], Overruled = null });
        var csv = LedgerCsv.Write([.. entries]).Replace("\"a, \"\"b\"\"\r\nc\"", "x", StringComparison.Ordinal);
        Assert.EndsWith("\r\n", csv, StringComparison.Ordinal);
        Assert.Equal(csv.Count(sign => sign == '\r'), csv.Count(sign => sign == '\n'));
        var lines = csv.Split("\r\n")[..^1];
        Assert.Equal(SampleLedger.Full.Entries.Count + 1, lines.Length);
        Assert.All(lines, line => Assert.Equal(lines[0].Split(',').Length, line.Split(',').Length));
    }

    [Theory]
    [InlineData("plain", "plain")]
    [InlineData("", "")]
    [InlineData("a,b", "\"a,b\"")]
    [InlineData("say \"x\"", "\"say \"\"x\"\"\"")]
    [InlineData("two\nlines", "\"two\nlines\"")]
    [InlineData("=1+1", "'=1+1")]
    [InlineData("+1", "'+1")]
    [InlineData("-1", "'-1")]
    [InlineData("@sum", "'@sum")]
    [InlineData("\tx", "'\tx")]
    [InlineData("=a,b", "\"'=a,b\"")]
    public void A_text_is_quoted_where_it_must_be_and_is_never_a_formula(string text, string cell) => Assert.Equal(cell, CsvCell.Text(text));

    [Fact]
    public void A_number_is_not_rounded_and_one_below_nothing_is_no_formula()
    {
        Assert.Equal("-41.39999999999998", CsvCell.Number(320 - 361.4));
        Assert.Equal("", CsvCell.Number(null));
        Assert.Equal("", CsvCell.Number(double.NaN));
    }
}

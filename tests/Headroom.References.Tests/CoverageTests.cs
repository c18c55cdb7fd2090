namespace Headroom.References.Tests;

public sealed class CoverageTests
{
    private static IEnumerable<string> Required => Csv.Read("required-ids").Select(row => row[0]);

    private static IEnumerable<string> Checked => PrintedTables.All.SelectMany(table => table.Rows).Select(row => row.Id);

    [Fact]
    public void Every_row_of_the_reference_is_checked_or_says_why_not() =>
        Assert.Empty(Required.Except(Checked.Concat(Unchecked.All.Select(row => row.Id))));

    [Fact]
    public void No_figure_claims_a_row_that_the_reference_lacks() =>
        Assert.Empty(Checked.Concat(Unchecked.All.Select(row => row.Id)).Except(Required));

    [Fact]
    public void Every_statement_left_unchecked_gives_a_reason() =>
        Assert.All(Unchecked.All, row => Assert.True(row.Reason.Length > 20, $"{row.Id} has no reason."));

    [Fact]
    public void Every_figure_names_its_source() =>
        Assert.All(PrintedTables.All.SelectMany(table => table.Rows), row => Assert.NotEmpty(row.Source));
}

namespace Headroom.References.Tests;

public sealed class CoverageTests
{
    private static IEnumerable<string> Required => [.. Named("power-and-cabling", "required-ids"), .. Named("sound-air-heat", "sound-required-ids"), .. Named("runtime", "standby-required-ids"), .. Named("runtime", "traffic-required-ids"), .. Named("runtime", "runtime-office-required-ids"), .. Named("runtime", "measured-required-ids")];

    private static IEnumerable<string> Checked => PrintedTables.All.SelectMany(table => table.Rows).Select(row => $"{row.Reference}/{row.Id}");

    private static IEnumerable<string> Left => Unchecked.All.Concat(Unchecked.NotYet).Select(row => $"{row.Reference}/{row.Id}");

    [Fact]
    public void Every_row_of_the_reference_is_checked_or_says_why_not() =>
        Assert.Empty(Required.Except(Checked.Concat(Left)));

    [Fact]
    public void No_figure_claims_a_row_that_the_reference_lacks() =>
        Assert.Empty(Checked.Concat(Left).Except(Required));

    [Fact]
    public void What_waits_for_a_later_study_is_not_checked_already() =>
        Assert.Empty(Unchecked.NotYet.Select(row => $"{row.Reference}/{row.Id}").Intersect(Checked));

    [Fact]
    public void Every_statement_left_unchecked_gives_a_reason() =>
        Assert.All(Unchecked.All.Concat(Unchecked.NotYet), row => Assert.True(row.Reason.Length > 20, $"{row.Id} has no reason."));

    [Fact]
    public void Every_figure_names_its_source() =>
        Assert.All(PrintedTables.All.SelectMany(table => table.Rows), row => Assert.NotEmpty(row.Source));

    private static IEnumerable<string> Named(string reference, string file) => Csv.Read(file).Select(row => $"{reference}/{row[0]}");
}

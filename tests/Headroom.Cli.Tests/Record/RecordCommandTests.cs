using System.Text.Json;
using Headroom.Cli.Tests.Commands;
using Headroom.Cli.Text;

namespace Headroom.Cli.Tests.Record;

public sealed class RecordCommandTests
{
    private static readonly string Example = Repository.PathOf("examples/firm-record");

    private static ProcessResult Of(string folder, params string[] options) => TestDesk.Run(["record", folder, "--on", "2026-11-25", .. options]);

    [Fact]
    public void A_short_shelf_ends_with_1() => Assert.Equal(1, Of(Example).ExitCode);

    [Fact]
    public void Every_figure_opens_and_no_line_is_wider_than_the_page()
    {
        var opened = Of(Example, "--working").Out;
        Assert.All(opened.Split('\n'), line => Assert.True(Columns.Of(line) <= Pen.Columns, line));
        using var json = JsonDocument.Parse(Of(Example, "--format", "json").Out);
        var figures = new[] { "models", "pairs", "places", "shelf", "jobs", "predictions", "draws" }.Sum(part => json.RootElement.GetProperty(part).GetArrayLength());
        Assert.Equal(figures, opened.Split('\n').Count(line => line.StartsWith("  formula ", StringComparison.Ordinal)));
        Assert.Contains("hours.csv:6:1", opened, StringComparison.Ordinal);
    }

    [Fact]
    public void Its_json_is_what_the_schema_says() => Assert.Equal("", ShippedSchema.Faults("record", Of(Example, "--format", "json").Out));

    [Fact]
    public void Its_csv_has_ten_cells_in_every_row_and_every_part()
    {
        var rows = Of(Example, "--format", "csv").Out.Split("\r\n")[..^1];
        Assert.All(rows.Where(row => !row.Contains('"', StringComparison.Ordinal)), row => Assert.Equal(10, row.Split(',').Length));
        Assert.All(new[] { "failures", "compared", "spares", "jobs", "predicted", "draws" }, part => Assert.Contains(rows, row => row.StartsWith(part + ",", StringComparison.Ordinal)));
    }

    [Fact]
    public void One_sheet_is_enough_and_the_others_are_said_to_be_missing()
    {
        using var folder = new RecordFolder(("hours.csv", "job,worked (h)\na,3\n"));
        var result = Of(folder.Path);
        Assert.Equal((0, ""), (result.ExitCode, result.Err));
        Assert.All(new[] { "fleet.csv", "failures.csv", "shelf.csv", "readings.csv" }, file => Assert.Contains(file, result.Out, StringComparison.Ordinal));
        Assert.DoesNotContain("0 failed", result.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void A_slip_anywhere_leaves_nothing_worked()
    {
        using var folder = new RecordFolder(("hours.csv", "job,worked (h)\na,3\n"), ("shelf.csv", "model,spares,certainty\nalder,1,140 %\n"));
        var result = Of(folder.Path);
        Assert.Equal((2, ""), (result.ExitCode, result.Out));
        Assert.Contains("shelf.csv:2:9: error REC004: C2 says '140 %' for certainty; between 50 and 99.99 %;", result.Err, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("--on", "2026-02-30")]
    [InlineData("--hot", "38")]
    [InlineData("--column", "Built=installed")]
    public void An_option_that_says_nothing_is_refused(string option, string value) => Assert.Equal(2, Of(Example, option, value).ExitCode);

    [Fact]
    public void The_published_command_does_it_too()
    {
        var result = Run.Headroom("record", "examples/firm-record", "--on", "2026-11-25", "--format", "csv");
        Assert.Equal(1, result.ExitCode);
        Assert.StartsWith("part,subject,against,figure,", result.Out, StringComparison.Ordinal);
        Assert.Equal(2, Run.Headroom("record", "no-such-folder").ExitCode);
    }
}

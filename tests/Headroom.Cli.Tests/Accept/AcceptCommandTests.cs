using System.Text.Json;
using Headroom.Cli.Tests.Commands;
using Headroom.Cli.Text;

namespace Headroom.Cli.Tests.Accept;

public sealed class AcceptCommandTests
{
    private static readonly string Job = Repository.PathOf("examples/barn-vets/job.yaml");
    private static readonly string Records = Repository.PathOf("examples/barn-vets/tester.csv");

    [Fact]
    public void It_tells_what_is_open_and_what_is_marginal()
    {
        var result = TestDesk.Run(["accept", Job, Records]);
        Assert.Equal((1, ""), (result.ExitCode, result.Err));
        Assert.Contains("27 drops: 17 accepted, 1 marginal, 9 open", result.Out, StringComparison.Ordinal);
        Assert.Contains("is K-21 meant?", result.Out, StringComparison.Ordinal);
        Assert.All(result.Out.Split('\n'), line => Assert.True(Columns.Of(line) <= Pen.Columns, line));
    }

    [Fact]
    public void As_json_every_drop_of_the_schedule_is_there_once()
    {
        using var json = JsonDocument.Parse(TestDesk.Run(["accept", Job, Records, "--format", "json"]).Out);
        var drops = json.RootElement.GetProperty("drops").EnumerateArray().ToList();
        Assert.Equal(27, drops.Select(drop => drop.GetProperty("id").GetString()).Distinct().Count());
        Assert.Equal("too-long", drops.Single(drop => drop.GetProperty("id").GetString() == "K-20").GetProperty("reason").GetString());
    }

    [Fact]
    public void The_json_fits_the_shipped_schema()
    {
        var json = TestDesk.Run(["accept", Job, Records, "--format", "json"]).Out;
        Assert.Equal("", ShippedSchema.Faults("acceptance", json));
        Assert.NotEqual("", ShippedSchema.Faults("acceptance", json.Replace("marginDecibels", "margin", StringComparison.Ordinal)));
        Assert.NotEqual("", ShippedSchema.Faults("acceptance", json.Replace("\"near\"", "\"nearest\"", StringComparison.Ordinal)));
    }

    [Fact]
    public void As_csv_it_has_a_row_a_drop_and_one_for_every_label_that_is_none()
    {
        var lines = TestDesk.Run(["accept", Job, Records, "--format", "csv"]).Out.Split("\r\n", StringSplitOptions.RemoveEmptyEntries);
        Assert.Equal(1 + 27 + 2, lines.Length);
        Assert.Contains(lines, line => line.StartsWith("K-17,open,channel-for-link,", StringComparison.Ordinal));
    }

    [Fact]
    public void Another_agreed_limit_leaves_nothing_accepted() =>
        Assert.Contains("0 accepted", TestDesk.Run(["accept", Job, Records, "--limit", "Cat 6A permanent link"]).Out, StringComparison.Ordinal);

    [Fact]
    public void A_file_without_the_limit_is_refused_by_name()
    {
        var result = Of("Label,Result,Length (m)\nK-01,PASS,14\n");
        Assert.Equal((2, ""), (result.ExitCode, result.Out));
        Assert.Contains("no column of 3 is headed as 'limit'", result.Err, StringComparison.Ordinal);
    }

    [Fact]
    public void A_column_with_a_name_of_its_own_can_be_told() =>
        Assert.Equal(1, Of("Label,Result,Rule\nK-01,PASS,Cat 6 permanent link\n", "--column", "Rule=limit").ExitCode);

    [Fact]
    public void A_word_that_is_no_result_is_refused()
    {
        var result = Of("Label,Result,Limit\nK-01,fine,Cat 6 permanent link\n");
        Assert.Equal(2, result.ExitCode);
        Assert.Contains("SHT028: row 2 has the result 'fine'", result.Err, StringComparison.Ordinal);
    }

    [Fact]
    public void Lengths_in_feet_give_the_same_standing()
    {
        Assert.Contains("may be 90 m", Of("Label,Result,Limit,Length (ft)\nK-01,PASS,Cat 6 permanent link,296\n").Out, StringComparison.Ordinal);
        Assert.Contains("1 accepted", Of("Label,Result,Limit,Length (ft)\nK-01,PASS,Cat 6 permanent link,295\n").Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Readings_of_the_firm_stand_beside_the_watts()
    {
        var result = TestDesk.Run(["explain", Job, "power/sw-1/watts", "--readings", Repository.PathOf("examples/barn-vets/readings.csv")]);
        Assert.Equal("", result.Err);
        Assert.Contains("bulrush from 6 sites", string.Join(' ', result.Out.Split([' ', '\n'], StringSplitOptions.RemoveEmptyEntries)), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("Site,Model,Watts\nHere,pipit,140\n", "SHT029")]
    [InlineData("Site,Model,Mode,Watts\nHere,pipit,dusk,3\n", "SHT028")]
    [InlineData("Site,Model\nHere,pipit\n", "SHT008")]
    public void A_reading_that_cannot_be_is_refused(string text, string code)
    {
        using var file = new TemporaryFile(text);
        var result = TestDesk.Run(["study", Job, "--readings", file.Path]);
        Assert.Equal((2, ""), (result.ExitCode, result.Out));
        Assert.Contains(code, result.Err, StringComparison.Ordinal);
    }

    private static ProcessResult Of(string text, params string[] options)
    {
        using var file = new TemporaryFile(text);
        return TestDesk.Run(["accept", Job, file.Path, .. options]);
    }

    private sealed class TemporaryFile : IDisposable
    {
        public TemporaryFile(string text) => File.WriteAllText(Path, text);

        public string Path { get; } = System.IO.Path.Combine(System.IO.Path.GetTempPath(), System.IO.Path.GetRandomFileName() + ".csv");

        public void Dispose() => File.Delete(Path);
    }
}

using System.Text.Json;
using Headroom.Cli.Tests.Commands;
using Headroom.Cli.Text;

namespace Headroom.Cli.Tests.Years;

public sealed class YearsCommandTests
{
    private static readonly string Job = Repository.PathOf("examples/barn-vets/job.yaml");

    [Fact]
    public void The_sheet_is_as_accepted_and_within_the_page()
    {
        var result = Run.Headroom("years", "examples/barn-vets/job.yaml", "--until", "7", "--on", "2026-11-25");
        Assert.Equal((1, ""), (result.ExitCode, result.Err));
        Golden.Agrees("years-barn-vets.txt", result.Out);
        Assert.All(result.Out.Split('\n'), line => Assert.True(Columns.Of(line) <= Pen.Columns, line));
    }

    [Theory]
    [InlineData("examples/barn-vets/job.yaml")]
    [InlineData("examples/one-desk/job.yaml")]
    [InlineData("examples/school-wings/job.yaml")]
    public void Its_json_is_what_the_schema_says(string job)
    {
        var result = TestDesk.Run(["years", Repository.PathOf(job), "--until", "3", "--format", "json"]);
        Assert.Equal("", result.Err);
        Assert.Equal("", ShippedSchema.Faults("years", result.Out));
        using var json = JsonDocument.Parse(result.Out);
        Assert.Equal(4, json.RootElement.GetProperty("years").GetArrayLength());
    }

    [Theory]
    [InlineData("\"verdict\": \"short\"", "\"verdict\": \"worse\"")]
    [InlineData("\"dues\":", "\"due\":")]
    [InlineData("headroom-years/1", "headroom-years/2")]
    public void The_schema_refuses_another_shape(string right, string wrong)
    {
        var json = TestDesk.Run(["years", Job, "--until", "3", "--format", "json"]).Out;
        Assert.Contains(right, json, StringComparison.Ordinal);
        Assert.NotEqual("", ShippedSchema.Faults("years", json.Replace(right, wrong, StringComparison.Ordinal)));
    }

    [Fact]
    public void As_csv_it_has_a_row_for_all_that_turns_and_all_that_is_due_in_order_of_time()
    {
        var result = TestDesk.Run(["years", Job, "--until", "7", "--format", "csv"]);
        var rows = result.Out.Split("\r\n")[1..^1];
        var days = rows.Select(row => row.Split(',')[0]).Where(day => day.Length > 0).ToList();
        Assert.Equal(days.Order(StringComparer.Ordinal), days);
        Assert.Contains(rows, row => row.Contains(",turn,ups-1,standby/ups-1/runtime,", StringComparison.Ordinal));
        Assert.Contains(rows, row => row.Contains(",due,ups-1,,", StringComparison.Ordinal));
    }

    [Fact]
    public void A_job_that_says_nothing_of_years_is_told_what_to_ask()
    {
        var result = TestDesk.Run(["years", Repository.PathOf("examples/one-desk/job.yaml")]);
        Assert.Equal((0, ""), (result.ExitCode, result.Err));
        Assert.Contains("Nothing becomes short until 25 Nov 2031, as far as is known.", result.Out, StringComparison.Ordinal);
        Assert.Contains("unknown: how many devices come in a year, and of which kind?", result.Out.Replace("\n           ", "", StringComparison.Ordinal), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("--until 0", "--until is a number of years from 1 to 20, not '0'")]
    [InlineData("--until 21", "--until is a number of years from 1 to 20, not '21'")]
    [InlineData("--until seven", "--until is a number of years from 1 to 20, not 'seven'")]
    [InlineData("--design mendd", "did you mean mended?")]
    [InlineData("--on 25.11.2026", "--on is a day written as 2026-11-25")]
    public void What_makes_no_sense_is_refused(string options, string complaint)
    {
        var result = TestDesk.Run(["years", Job, .. options.Split(' ')]);
        Assert.Equal((2, ""), (result.ExitCode, result.Out));
        Assert.Contains(complaint, result.Err, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("devices: {phone: 3 W}")]
    [InlineData("devices: {phone: 300 %}")]
    [InlineData("devices: {phon: 1}")]
    [InlineData("prices: 3")]
    [InlineData("prices: 60 %")]
    [InlineData("air lost: 5 Pa")]
    [InlineData("cleaned every: 1 d")]
    [InlineData("installed: 14.12.2026")]
    [InlineData("tests: {plugs: 2}")]
    public void A_slip_in_the_job_is_refused_with_its_line(string years)
    {
        var result = TestDesk.Run(["years", "-"], $"headroom: 1\njob: x\npolicy:\n  years: {{{years}}}\nsurvey: {{endpoints: {{2 x pipit: }}}}\ndesigns: {{d: {{switches: {{sw-1: {{model: tarn}}}}}}}}\n");
        Assert.Equal((2, ""), (result.ExitCode, result.Out));
        Assert.Contains("standard input:4:", result.Err, StringComparison.Ordinal);
    }
}

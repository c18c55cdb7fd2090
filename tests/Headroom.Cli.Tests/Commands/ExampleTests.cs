using Headroom.Cli.Text;

namespace Headroom.Cli.Tests.Commands;

public sealed class ExampleTests
{
    public static TheoryData<string> Jobs => [.. Examples.Jobs];

    [Fact]
    public void There_are_examples() => Assert.Contains("examples/barn-vets/job.yaml", Examples.Jobs);

    [Theory, MemberData(nameof(Jobs))]
    public void No_line_of_any_sheet_is_wider_than_the_page(string job) => Assert.All(
        new[] { "metric", "imperial" }.SelectMany(units => Examples.Study(job, "--all", "--units", units).Split('\n')),
        line => Assert.True(Columns.Of(line) <= Pen.Columns, line));

    [Theory, MemberData(nameof(Jobs))]
    public void Every_entry_and_figure_can_be_explained_within_the_page(string job)
    {
        var ids = Examples.Ids(job);
        var result = TestDesk.Run(["explain", Repository.PathOf(job), .. ids]);
        Assert.True(result.ExitCode < 2, result.Err);
        var unbroken = result.Out.Replace("\n", "", StringComparison.Ordinal);
        Assert.All(ids, id => Assert.Contains(id, unbroken, StringComparison.Ordinal));
        Assert.All(result.Out.Split('\n'), line => Assert.True(Columns.Of(line) <= Pen.Columns, line));
    }

    [Theory, MemberData(nameof(Jobs))]
    public void Its_json_is_what_the_schema_says(string job)
    {
        Assert.Equal("", ShippedSchema.Faults("ledger", Examples.Study(job, "--format", "json")));
        var explained = TestDesk.Run(["explain", Repository.PathOf(job), Examples.Ids(job)[0], "--format", "json"]);
        Assert.Equal("", ShippedSchema.Faults("ledger", explained.Out));
    }

    [Theory, MemberData(nameof(Jobs))]
    public void Its_csv_has_a_row_for_every_entry(string job)
    {
        var rows = Examples.Study(job, "--format", "csv").Split("\r\n")[1..^1];
        Assert.Equal(rows.Select(row => row.Split(',')[0]), Examples.Ids(job).Take(rows.Length));
    }

    [Theory, MemberData(nameof(Jobs))]
    public void It_is_sound(string job)
    {
        var result = TestDesk.Run(["check", Repository.PathOf(job)]);
        Assert.True(result.ExitCode == 0, result.Out);
    }

    [Theory, MemberData(nameof(Jobs))]
    public void What_asks_nothing_comes_after_all_that_asks_something(string job)
    {
        using var json = System.Text.Json.JsonDocument.Parse(Examples.Study(job, "--format", "json"));
        var clear = json.RootElement.GetProperty("entries").EnumerateArray().Where(entry => entry.GetProperty("verdict").GetString() == "clear" && entry.GetProperty("studied").GetString() == "clear");
        var asks = clear.Select(entry => entry.GetProperty("demand").GetDouble() > 0 ? 0 : 1).ToList();
        Assert.Equal(asks.Order(), asks);
    }

    [Fact]
    public void Readings_are_told_with_the_pair_the_method_and_the_end_they_are_of()
    {
        var sheet = Examples.Study("examples/barn-vets/job.yaml").ReplaceLineEndings(" ");
        Assert.Contains("10.1 Ω on 10 Nov 2026, multimeter, pair 4-5,", sheet, StringComparison.Ordinal);
        Assert.Contains("10.2 W on 9 Nov 2026, switch, night,", sheet, StringComparison.Ordinal);
        using var json = System.Text.Json.JsonDocument.Parse(Examples.Study("examples/barn-vets/job.yaml", "--format", "json"));
        var loss = json.RootElement.GetProperty("entries").EnumerateArray().SelectMany(entry => entry.GetProperty("measured").EnumerateArray()).First(reading => reading.GetProperty("at").GetString() == "F-1");
        Assert.Equal(("one-cord reference", "from the closet"), (loss.GetProperty("method").GetString(), loss.GetProperty("direction").GetString()));
    }

    [Fact]
    public void A_run_in_pieces_says_of_each_how_long_and_how_warm_it_may_be()
    {
        var volts = TestDesk.Run(["explain", Repository.PathOf("examples/barn-vets/job.yaml"), "field-link/volts"]).Out;
        Assert.Contains("air around piece 1 of K-17: no value of it alone mends this", volts, StringComparison.Ordinal);
        Assert.All(new[] { "length of piece 1", "air around piece 1", "length of piece 2", "air around piece 2" }, input => Assert.Contains($"{input} of K-17: ", volts[volts.IndexOf("holds", StringComparison.Ordinal)..], StringComparison.Ordinal));
    }

    [Fact]
    public void The_source_of_a_working_names_the_job_by_its_file_alone()
    {
        var job = Repository.PathOf("examples/barn-vets/job.yaml");
        var told = TestDesk.Run(["explain", job, "sw-1/watts"]).Out;
        Assert.Contains("setting of sw-1: job.yaml:", string.Join(' ', told.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries)), StringComparison.Ordinal);
        Assert.DoesNotContain(Path.GetDirectoryName(job)!, told, StringComparison.Ordinal);
    }

    [Fact]
    public void A_first_job_is_sound_and_nothing_in_it_is_short_or_unknown()
    {
        var first = TestDesk.Run(["new"]).Out;
        Assert.Equal(new(0, "standard input: sound\n", ""), TestDesk.Run(["check", "-"], first));
        var studied = TestDesk.Run(["study", "-", "--strict"], first);
        Assert.Equal((0, ""), (studied.ExitCode, studied.Err));
    }
}

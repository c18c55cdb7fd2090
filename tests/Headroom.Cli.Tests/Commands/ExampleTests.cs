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

    [Fact]
    public void A_first_job_is_sound_and_nothing_in_it_is_short_or_unknown()
    {
        var first = TestDesk.Run(["new"]).Out;
        Assert.Equal(new(0, "standard input: sound\n", ""), TestDesk.Run(["check", "-"], first));
        var studied = TestDesk.Run(["study", "-", "--strict"], first);
        Assert.Equal((0, ""), (studied.ExitCode, studied.Err));
    }
}

using Headroom.Cli.Text;

namespace Headroom.Cli.Tests.Commands;

public sealed class CompareTests
{
    private static readonly string Barn = Repository.PathOf("examples/barn-vets/job.yaml");

    [Fact]
    public void A_design_does_not_differ_from_itself()
    {
        var result = TestDesk.Run(["compare", Barn, "mended", "mended", "--only", "power"]);
        Assert.Equal((0, ""), (result.ExitCode, result.Err));
        Assert.Contains("nothing: the two are the same", result.Out, StringComparison.Ordinal);
        Assert.Contains("No limit changes", result.Out, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("as-offered mended --only power", 0)]
    [InlineData("mended as-offered", 1)]
    [InlineData("--swap wren-b=redshank", 1)]
    public void It_ends_as_a_study_of_the_second_would(string typed, int exitCode) =>
        Assert.Equal(exitCode, TestDesk.Run(["compare", Barn, .. typed.Split(' ')]).ExitCode);

    [Theory]
    [InlineData("as-offered mended")]
    [InlineData("as-offered mended --only power")]
    [InlineData("--swap wren-b=redshank --swap pipit=bulrush")]
    [InlineData("mended --swap bulrush=pipit")]
    public void Its_json_is_what_the_schema_says_and_its_text_keeps_to_the_page(string typed)
    {
        var json = TestDesk.Run(["compare", Barn, .. typed.Split(' '), "--format", "json"]);
        Assert.Equal("", ShippedSchema.Faults("compare", json.Out));
        Assert.All(TestDesk.Run(["compare", Barn, .. typed.Split(' ')]).Out.Split('\n'), line => Assert.True(Columns.Of(line) <= Pen.Columns, line));
    }

    [Theory]
    [InlineData("as-offerd mendd", "headroom: the job has no design 'as-offerd'; did you mean as-offered?; it has as-offered, mended\nheadroom: the job has no design 'mendd'; did you mean mended?; it has as-offered, mended\n")]
    [InlineData("--swap wren-b=cat6-23", "headroom: wren-b is a switch and cat6-23 a cable; a swap keeps the kind\n")]
    [InlineData("--swap wren-b=redshnk", "headroom: the catalogue has no model 'redshnk' that is a switch, as wren-b is; did you mean redshank?; 'headroom catalogue list' lists all\n")]
    public void What_is_not_there_is_refused_with_what_is_near(string typed, string complaint) =>
        Assert.Equal(new(2, "", complaint), TestDesk.Run(["compare", Barn, .. typed.Split(' ')]));

    [Fact]
    public void A_model_with_too_few_ports_is_found_as_in_any_job()
    {
        var result = TestDesk.Run(["compare", Barn, "--swap", "wren-b=whimbrel"]);
        Assert.Equal((2, ""), (result.ExitCode, result.Out));
        Assert.Matches(@"job\.yaml:\d+:\d+: error RUL\d+: .*sw-1/25.*whimbrel", result.Err);
    }
}

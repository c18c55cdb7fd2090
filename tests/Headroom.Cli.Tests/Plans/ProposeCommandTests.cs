using Headroom.Cli.Tests.Commands;
using Headroom.Cli.Text;

namespace Headroom.Cli.Tests.Plans;

public sealed class ProposeCommandTests
{
    private static readonly string Job = Repository.PathOf("examples/one-desk/job.yaml");

    [Fact]
    public void It_shows_designs_that_are_not_short_in_eighty_columns()
    {
        var result = TestDesk.Run(["propose", Job, "--on", "2026-11-25"]);
        Assert.Equal((0, ""), (result.ExitCode, result.Err));
        Golden.Agrees("propose-one-desk.txt", result.Out);
        Assert.All(result.Out.Split('\n'), line => Assert.True(Columns.Of(line) <= Pen.Columns, line));
    }

    [Fact]
    public void As_json_it_keeps_to_its_schema_and_is_the_same_byte_for_byte()
    {
        var result = TestDesk.Run(["propose", Job, "--on", "2026-11-25", "--format", "json"]);
        Assert.Equal("", ShippedSchema.Faults("plan", result.Out));
        Assert.Equal(result.Out, TestDesk.Run(["propose", Job, "--on", "2026-11-25", "--format", "json"]).Out);
    }

    [Fact]
    public void What_was_pinned_and_is_not_there_is_named_and_nothing_is_planned()
    {
        var result = TestDesk.Run(["propose", Job, "--keep", "sw-9", "--model", "aldr", "--not-in", "cellar"]);
        Assert.Equal((2, ""), (result.ExitCode, result.Out));
        Assert.Contains("there is no switch 'sw-9' to keep", result.Err, StringComparison.Ordinal);
        Assert.Contains("did you mean alder?", result.Err, StringComparison.Ordinal);
        Assert.Contains("there is no space 'cellar'", result.Err, StringComparison.Ordinal);
    }

    [Fact]
    public void Where_no_design_is_possible_the_clash_is_told_and_what_giving_up_each_costs()
    {
        var result = TestDesk.Run(["propose", Job, "--model", "gorse", "--on", "2026-11-25"]);
        Assert.Equal(1, result.ExitCode);
        Assert.Contains("No design is possible", result.Out, StringComparison.Ordinal);
        Assert.Contains("only gorse may be used", result.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Written_into_the_file_the_designs_can_be_studied_and_all_else_is_as_it_was()
    {
        var folder = Directory.CreateTempSubdirectory();
        var file = Path.Combine(folder.FullName, "job.yaml");
        var before = File.ReadAllText(Job);
        File.WriteAllText(file, before);
        Assert.Equal(0, TestDesk.Run(["propose", file, "--on", "2026-11-25", "--write"]).ExitCode);
        Assert.StartsWith(before.TrimEnd(), File.ReadAllText(file), StringComparison.Ordinal);
        Assert.Equal(0, TestDesk.Run(["study", file, "--design", "proposed-cheapest"]).ExitCode);
        folder.Delete(recursive: true);
    }

    // Stopped before anything was searched: the design that is found at once is there, and is not called proved.
    [Fact]
    public void Who_stops_at_once_still_has_a_design()
    {
        var result = TestDesk.Run(["propose", Repository.PathOf("examples/school-wings"), "--time", "0.001", "--on", "2026-11-25"]);
        Assert.Equal(0, result.ExitCode);
        Assert.Contains("Stopped before the end", result.Out, StringComparison.Ordinal);
        Assert.DoesNotContain("proved: no design", result.Out.Replace("not proved: no design", "", StringComparison.Ordinal), StringComparison.Ordinal);
    }

    // Nothing within the budget comes up at once there.
    [Fact]
    public void Where_nothing_came_up_in_time_it_is_not_said_that_nothing_is_possible()
    {
        var result = TestDesk.Run(["propose", Repository.PathOf("examples/barn-vets"), "--time", "0.001", "--on", "2026-11-25"]);
        Assert.Equal(1, result.ExitCode);
        Assert.Contains("No design came up before the search was stopped", result.Out, StringComparison.Ordinal);
        Assert.DoesNotContain("No design is possible", result.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void A_model_that_the_client_owns_costs_nothing()
    {
        var result = TestDesk.Run(["propose", Job, "--owns", "smew=1", "--on", "2026-11-25"]);
        // Two injectors of 34 are all that is bought.
        Assert.Contains("68.00 EUR\n  smew + 2 x withy", result.Out, StringComparison.Ordinal);
    }
}

using System.Text.Json;
using Headroom.Cli.Tests.Commands;
using Headroom.Cli.Text;

namespace Headroom.Cli.Tests.Restart;

public sealed class RestartCommandTests
{
    private static readonly string Job = Repository.PathOf("examples/barn-vets/job.yaml");

    [Fact]
    public void It_tells_who_is_up_when_and_who_stays_dark()
    {
        var result = TestDesk.Run(["restart", Job]);
        Assert.Equal((1, ""), (result.ExitCode, result.Err));
        Assert.Contains("sw-1 is up, has 217 W for its ports", result.Out, StringComparison.Ordinal);
        Assert.Contains("dark: phone-1, phone-2, phone-3, phone-4, phone-5, till", result.Out, StringComparison.Ordinal);
        Assert.All(result.Out.Split('\n'), line => Assert.True(Columns.Of(line) <= Pen.Columns, line));
    }

    [Fact]
    public void Where_all_come_up_it_ends_with_0_and_says_when_the_phones_ring()
    {
        var result = TestDesk.Run(["restart", Job, "--design", "mended"]);
        Assert.Equal(0, result.ExitCode);
        Assert.Contains("phone     back at 3:30", result.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void As_json_it_has_the_moments_of_every_port_and_the_steps_of_the_watts()
    {
        var result = TestDesk.Run(["restart", Job, "--format", "json"]);
        using var json = JsonDocument.Parse(result.Out);
        var unit = json.RootElement.GetProperty("units")[0];
        Assert.Equal("headroom-restart/1", json.RootElement.GetProperty("format").GetString());
        Assert.Equal(16, unit.GetProperty("ports").GetArrayLength());
        Assert.Equal(20, unit.GetProperty("steps").GetArrayLength());
        Assert.Equal(JsonValueKind.Null, unit.GetProperty("ports")[15].GetProperty("onSeconds").ValueKind);
    }

    [Theory]
    [InlineData("as-offered")]
    [InlineData("mended")]
    public void The_json_fits_the_shipped_schema_in_which_every_figure_carries_its_unit(string design)
    {
        var json = TestDesk.Run(["restart", Job, "--design", design, "--format", "json"]).Out;
        Assert.Equal("", ShippedSchema.Faults("restart", json));
        Assert.NotEqual("", ShippedSchema.Faults("restart", json.Replace("budgetWatts", "budget", StringComparison.Ordinal)));
    }

    [Theory]
    [InlineData("examples/barn-vets/job.yaml", "as-offered")]
    [InlineData("examples/barn-vets/job.yaml", "mended")]
    [InlineData("examples/one-desk/job.yaml", "today")]
    [InlineData("examples/school-wings/job.yaml", "as-planned")]
    public void Its_json_is_what_the_schema_says(string job, string design) =>
        Assert.Equal("", ShippedSchema.Faults("restart", TestDesk.Run(["restart", Repository.PathOf(job), "--design", design, "--format", "json"]).Out));

    [Theory]
    [InlineData("headroom-restart/1", "headroom-restart/2")]
    [InlineData("\"peakAt\":", "\"peak at\":")]
    [InlineData("\"known\": true", "\"known\": \"yes\"")]
    [InlineData("\"wave\": 1", "\"wave\": -1")]
    public void The_schema_refuses_another_shape(string right, string wrong)
    {
        var json = TestDesk.Run(["restart", Job, "--format", "json"]).Out;
        Assert.Contains(right, json, StringComparison.Ordinal);
        Assert.NotEqual("", ShippedSchema.Faults("restart", json.Replace(right, wrong, StringComparison.Ordinal)));
    }

    [Fact]
    public void A_design_that_is_not_there_is_refused()
    {
        var result = TestDesk.Run(["restart", Job, "--design", "mendd"]);
        Assert.Equal((2, ""), (result.ExitCode, result.Out));
        Assert.Contains("did you mean mended?", result.Err, StringComparison.Ordinal);
    }
}

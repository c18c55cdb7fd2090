using System.Text.Json;
using Headroom.Cli.Tests.Commands;

namespace Headroom.Cli.Tests.Plans;

public sealed class TurnCommandTests
{
    private static readonly string Job = Repository.PathOf("examples/one-desk/job.yaml");

    [Fact]
    public void A_price_turns_the_design_exactly_where_it_costs_as_much_as_the_next()
    {
        var result = TestDesk.Run(["turn", Job, "--what", "price:vetch", "--format", "json", "--on", "2026-11-25"]);
        Assert.Equal((0, ""), (result.ExitCode, result.Err));
        Assert.Equal("", ShippedSchema.Faults("turn", result.Out));
        using var json = JsonDocument.Parse(result.Out);
        var up = json.RootElement.GetProperty("points")[0];
        // Two of it and two injectors of 34 against one of 131 and one injector: at 48.50 each they cost the same.
        Assert.Equal(48.5, up.GetProperty("at").GetDouble(), 0.011);
        Assert.True(up.GetProperty("proved").GetBoolean());
    }

    [Fact]
    public void What_cannot_be_turned_is_refused_with_what_can()
    {
        var result = TestDesk.Run(["turn", Job, "--what", "colour:red", "--what", "draw:bulrsh"]);
        Assert.Equal((2, ""), (result.ExitCode, result.Out));
        Assert.Contains("draw:MODEL, price:MODEL", result.Err, StringComparison.Ordinal);
        Assert.Contains("did you mean bulrush?", result.Err, StringComparison.Ordinal);
    }
}

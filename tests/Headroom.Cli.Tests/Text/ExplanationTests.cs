using Headroom.Cli.Tests.Sample;
using Headroom.Cli.Text;
using Headroom.Domain.Ledgers;

namespace Headroom.Cli.Tests.Text;

public sealed class ExplanationTests
{
    private static readonly Pen Drawn = new(Unicode: true, Colour: false);

    [Fact]
    public void Each_kind_of_entry_opens_as_accepted() =>
        Golden.Agrees("explanation.txt", Explanation.Write(Without("amperes"), new ExplainRequest("job.yaml", new ShownUnits(imperial: false)), Drawn));

    [Fact]
    public void In_feet_the_figures_change_and_the_working_says_that_it_does_not()
    {
        var length = SampleLedger.Of([SampleLedger.Full.Entries.Single(entry => entry.Unit == "m")], [], [], []);
        Golden.Agrees("explanation-imperial.txt", Explanation.Write(length, new ExplainRequest("job.yaml", new ShownUnits(imperial: true)), Drawn));
    }

    [Fact]
    public void The_id_is_never_cut()
    {
        var id = "power/" + new string('x', 90) + "/volts";
        var text = Explanation.Write(SampleLedger.Of([SampleLedger.Entry(id, "volts", "V", "volts", 1, 2, 0)], [], [], []), new ExplainRequest("job.yaml", new ShownUnits(imperial: false)), Drawn);
        Assert.Contains(id, text.Replace("\n", "", StringComparison.Ordinal), StringComparison.Ordinal);
    }

    private static Ledger Without(string quantity) =>
        SampleLedger.Full with { Entries = [.. SampleLedger.Full.Entries.Where(entry => entry.Quantity != quantity)] };
}

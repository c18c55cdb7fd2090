using Headroom.Documents.Drawings;
using Headroom.Documents.Drawings.Traffic;

namespace Headroom.Documents.Tests.Drawings;

public sealed class UplinkTreeTests
{
    [Theory]
    [InlineData("barn-vets")]
    [InlineData("school-wings")]
    [InlineData("warm-shop")]
    public void Every_switch_is_one_row_below_the_one_its_uplink_leads_to(string job)
    {
        var input = DrawingInputs.Of(job);
        var rows = TreeRows.Of(input);
        var nodes = input.Results.Traffic.Switches.Select(one => one.Node).ToList();
        Assert.NotEmpty(nodes);
        Assert.All(nodes, node =>
        {
            var row = Assert.Single(rows, row => row.Name == node.Id);
            if (node.Parent is { } parent)
                Assert.Equal((parent.Id, 1), (rows[row.Above!.Value].Name, row.Depth - rows[row.Above.Value].Depth));
        });
        Assert.All(rows, row => Assert.True(row.Above is not { } above || above < rows.ToList().IndexOf(row)));
    }

    [Fact]
    public void What_is_asked_and_carried_are_the_figures_of_the_ledger()
    {
        var input = DrawingInputs.Of("school-wings");
        var texts = Recorder.Of(DrawingList.Find("uplinks")!.Draw(input, "")!).Texts.Select(text => text.Text).ToList();
        var uplinks = input.Ledger.Entries.Where(entry => entry is { Discipline: "traffic", Quantity: "uplink" }).ToList();
        Assert.NotEmpty(uplinks);
        Assert.All(uplinks, entry =>
        {
            var figures = Domain.Shown.Numbers.Together([entry.Demand, entry.Limit]);
            Assert.Contains(texts, text => text.EndsWith($"{figures[0]} of {figures[1]}", StringComparison.Ordinal));
        });
    }
}

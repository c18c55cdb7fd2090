using Headroom.Cli.Tests.Sample;
using Headroom.Cli.Text;
using Headroom.Domain.Ledgers;

namespace Headroom.Cli.Tests.Text;

public sealed class BarTests
{
    private static readonly Pen Drawn = new(Unicode: true, Colour: false);

    // Eleven cells with ten before the limit: one cell is a tenth of the limit.
    [Theory]
    [InlineData(0.0, 100.0, 0.0, "──────────┃")]
    [InlineData(50.0, 100.0, 0.0, "█████─────┃")]
    [InlineData(50.0, 100.0, 20.0, "█████───╷─┃")]
    [InlineData(0.1, 100.0, 0.0, "█─────────┃")]
    [InlineData(100.0, 100.0, 0.0, "██████████┃")]
    [InlineData(99.9, 100.0, 0.0, "██████████┃")]
    [InlineData(90.0, 100.0, 20.0, "███████╷█─┃")]
    [InlineData(81.0, 100.0, 20.0, "██████╷█──┃")]
    [InlineData(80.0, 100.0, 20.0, "████████╷─┃")]
    [InlineData(85.0, 100.0, 15.0, "█████████╷┃")]
    [InlineData(101.0, 100.0, 20.0, "██████████┃")]
    public void Inside_the_limit_each_cell_is_its_share(double demand, double limit, double reserve, string bar) =>
        Assert.Equal(bar, Draw(demand, limit, reserve, 11, 0));

    [Theory]
    [InlineData(101.0, "██████████┃▓  ")]
    [InlineData(120.0, "██████████┃▓▓ ")]
    [InlineData(130.0, "██████████┃▓▓▓")]
    [InlineData(500.0, "██████████┃▓▓≈")]
    public void Beyond_the_limit_at_least_one_cell_is_filled_and_a_bar_too_long_is_broken(double demand, string bar) =>
        Assert.Equal(bar, Draw(demand, 100, 20, 14, 3));

    [Fact]
    public void Where_zero_means_nothing_the_bar_begins_at_the_floor_of_the_entry()
    {
        var entry = Entry(37, 40, 2) with { Story = new Floored(30) };
        Assert.Equal("███████─╷─┃", new Bar(Drawn, 11, 0).Draw(entry));
        Assert.Equal("███████▒╷─┃", new Bar(Drawn, 11, 0).Draw(entry with { Peak = 38 }));
        Assert.Equal("██████████┃▓▓ ", new Bar(Drawn, 14, 3).Draw(entry with { Demand = 42, Studied = Verdict.Short }));
        Assert.Equal("──────────┃", new Bar(Drawn, 11, 0).Draw(entry with { Demand = 30, Reserve = 0 }));
        Assert.Equal(new string(' ', 11), new Bar(Drawn, 11, 0).Draw(entry with { Story = new Floored(40) }));
        Assert.Equal(1.2, Bar.Reach(entry with { Demand = 42 }), 1e-9);
    }

    [Fact]
    public void Peak_is_hatched_up_to_the_limit_and_beyond_it()
    {
        Assert.Equal("█████▒▒─╷─┃", new Bar(Drawn, 11, 0).Draw(Entry(50, 100, 20) with { Peak = 70 }));
        Assert.Equal("█████▒▒▒╷▒┃▒  ", new Bar(Drawn, 14, 3).Draw(Entry(50, 100, 20) with { Peak = 110 }));
    }

    [Fact]
    public void What_was_measured_is_a_circle_where_it_belongs()
    {
        Assert.Equal("█████──○──┃", new Bar(Drawn, 11, 0).Draw(Measured(Entry(50, 100, 0), 80)));
        Assert.Equal("████○─────┃", new Bar(Drawn, 11, 0).Draw(Measured(Entry(50, 100, 0), 50)));
        Assert.Equal("█████─────┃○  ", new Bar(Drawn, 14, 3).Draw(Measured(Entry(50, 100, 0), 104)));
    }

    [Fact]
    public void A_reading_in_another_unit_is_not_drawn() =>
        Assert.Equal("█████─────┃", new Bar(Drawn, 11, 0).Draw(Measured(Entry(50, 100, 0), 80) with { Unit = "W" }));

    [Theory]
    [InlineData(null, 100.0)]
    [InlineData(5.0, null)]
    [InlineData(5.0, 0.0)]
    [InlineData(5.0, -1.0)]
    public void Without_demand_or_limit_there_is_no_bar(double? demand, double? limit) =>
        Assert.Equal(new string(' ', 11), new Bar(Drawn, 11, 0).Draw(Entry(demand, limit, 0)));

    [Fact]
    public void The_tick_lies_on_the_side_of_the_demand_that_the_verdict_says() => Gen.Select(
            Gen.Double[0, 1000], Gen.Double[0.001, 1000], Gen.Double[0, 1000], Gen.Int[10, 18], Gen.Int[0, 3])
        .Sample((demand, limit, reserve, width, beyond) =>
        {
            var entry = Entry(demand, limit, Math.Min(reserve, limit));
            var bar = new Bar(Drawn, width, beyond).Draw(entry);
            Assert.Equal(width, bar.Length);
            Assert.Equal(width - 1 - beyond, bar.IndexOf('┃', StringComparison.Ordinal));
            var tick = bar.IndexOf('╷', StringComparison.Ordinal);
            Assert.True(tick < 0 || bar.LastIndexOf('█') < tick == (entry.Studied == Verdict.Clear), bar);
        });

    private static string Draw(double demand, double limit, double reserve, int width, int beyond) =>
        new Bar(Drawn, width, beyond).Draw(Entry(demand, limit, reserve));

    private static LedgerEntry Entry(double? demand, double? limit, double? reserve) =>
        SampleLedger.Entry("power/x/volts", "volts", "V", "volts", demand, limit, reserve);

    private static LedgerEntry Measured(LedgerEntry entry, double value) =>
        entry with { Measured = [new(SampleLedger.Volts(value), null, null, null, false, "")] };

    private sealed class Floored(double floor) : IEntryStory
    {
        public double? Floor => floor;

        public string Say(LedgerEntry entry) => "";

        public Working Work(LedgerEntry entry) => new("", [], [], "");

        public IReadOnlyList<Holds> Holds(LedgerEntry entry) => [];
    }
}

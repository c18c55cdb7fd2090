using Headroom.Domain.Ledgers;

namespace Headroom.Engineering.Tests.Cabling;

/// <summary>Entries of uplinks over fibre; all figures are invented.</summary>
public sealed class FibreEntriesTests
{
    private static Ledger Link(string drop, string uplink = "media: fibre, module: ten, drop: F-1", string readings = "") => CableJob.Study(
        $"F-1: {{from: closet, to: room, {drop}}}",
        rest: $"designs: {{d: {{switches: {{sw-1: {{model: box}}}}, uplinks: [{{from: sw-1/25, to: line, {uplink}}}]}}}}\n{readings}");

    [Theory]
    [InlineData("length: 150 m, cable: glass-3", 1.95, 2.6, "clear")]
    [InlineData("length: 300 m, cable: glass-4, mated pairs: 2, splices: 2", 3.0, 2.9, "short")]
    [InlineData("length: 300 m, cable: glass-3, mated pairs: 4", 3.9, 2.6, "short")]
    public void Loss_is_what_fibre_connections_and_splices_may_lose_against_the_port_type_on_that_fibre(string drop, double loss, double most, string verdict)
    {
        var entry = Link(drop).Entry("F-1/loss");
        Assert.Equal(loss, entry.Demand!.Value, 1e-9);
        Assert.Equal(most, entry.Limit!.Value, 1e-9);
        Assert.Equal(verdict, entry.Studied.ToString().ToLowerInvariant());
    }

    [Fact]
    public void Reach_and_loss_must_both_be_kept()
    {
        var ledger = Link("length: 120 m, cable: glass-4, mated pairs: 4");
        Assert.Equal(Verdict.Clear, ledger.Entry("F-1/reach").Studied);
        Assert.Equal(Verdict.Short, ledger.Entry("F-1/loss").Studied);
        Assert.Equal(Verdict.Short, Link("length: 301 m, cable: glass-3").Entry("F-1/reach").Studied);
    }

    [Fact]
    public void A_module_without_port_type_bears_what_it_declares() =>
        Assert.Equal(1.9, Link("length: 50 m, cable: glass-4", "media: fibre, module: bare-ten, drop: F-1").Entry("F-1/loss").Limit);

    [Fact]
    public void A_measured_loss_governs_and_the_worst_case_stays_beside_it()
    {
        var entry = Link("length: 120 m, cable: glass-4, mated pairs: 4", readings: "readings: [{what: loss, at: F-1, value: 1.1 dB, with: light source, on: 2026-11-14}]").Entry("F-1/loss");
        Assert.Equal((Verdict.Clear, 1.1), (entry.Studied, entry.Demand));
        Assert.Contains(entry.Beside, row => row.Group == "worst case" && Math.Abs(row.Demand!.Value - 3.36) < 1e-9);
        Assert.Equal(120 + 1000 * (2.9 - 1.1) / 3.0, entry.Turn("length").AtLimit!.Value, 1e-6);
    }

    [Theory]
    [InlineData("cable: glass-4", "media: fibre, module: ten, drop: F-1", "how long is F-1?")]
    [InlineData("length: 50 m", "media: fibre, module: ten, drop: F-1", "which fibre is F-1?")]
    [InlineData("length: 50 m, cable: glass-4", "media: fibre, drop: F-1", "which modules are at the ends")]
    [InlineData("length: 50 m, cable: glass-4", "media: fibre, module: dark, drop: F-1", "how much loss does dark bear on OM4?")]
    public void What_is_missing_is_asked_for_once(string drop, string uplink, string question)
    {
        var asking = Assert.Single(Link(drop, uplink).Entries, entry => entry.Studied == Verdict.Unknown);
        Assert.StartsWith(question, asking.Question, StringComparison.Ordinal);
    }

    [Fact]
    public void An_uplink_over_fibre_without_a_drop_asks_for_it() => Assert.StartsWith(
        "which fibre does the uplink from sw-1/25 run on?", Link("length: 50 m, cable: glass-4", "media: fibre, module: ten").Entry("sw-1/25/loss").Question, StringComparison.Ordinal);

    [Fact]
    public void A_fibre_that_no_uplink_uses_has_no_entry_but_a_total()
    {
        var ledger = CableJob.Study("F-1: {from: closet, to: room, length: 100 m, cable: glass-4}");
        Assert.DoesNotContain(ledger.Entries, entry => entry.Subject == "F-1");
        Assert.Equal(110, ledger.Figures.Single(figure => figure.Id == "cabling/glass-4/metres").Value!.Value, 1e-9);
    }

    [Fact]
    public void A_copper_module_bounds_its_run_cords_included()
    {
        var entry = Link("length: 26 m, cable: plain, panel cord: 1 m of patch-24, device cord: 2 m of patch-24", "module: short, drop: F-1").Entry("F-1/reach");
        Assert.Equal((Verdict.Short, 29, 28), (entry.Studied, entry.Demand, entry.Limit));
    }

    [Fact]
    public void Light_is_a_caution() => Assert.Contains(CautionTable.Laser, Link("length: 50 m, cable: glass-4").Entry("F-1/loss").Cautions);
}

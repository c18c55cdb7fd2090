using Headroom.Domain.Ledgers;

namespace Headroom.Engineering.Tests.Cabling;

/// <summary>Entries of cables tied together; all figures are invented.</summary>
public sealed class BundleEntriesTests
{
    private static Ledger Tied(int bundle, string model = "lamp", string cable = "stout", string air = "30 °C", string more = "") => CableJob.Study(
        $"K-01..K-04: {{from: closet, to: room, length: 30 m, cable: {cable}, ambient: {air}, bundle: {bundle}{more}}}",
        $"endpoints: {{x-1..x-4: {{model: {model}, drop: K-01..K-04}}}}",
        "designs: {d: {switches: {sw-1: {model: box}}, patch: {K-01..K-04: sw-1/1..4}}}");

    [Fact]
    public void More_than_two_dozen_is_beyond_the_guidance_and_says_that_it_is_guidance()
    {
        Assert.Equal(Verdict.Clear, Tied(24).Entry("K-01..K-04/bundle").Studied);
        var entry = Tied(25).Entry("K-01..K-04/bundle");
        Assert.Equal(Verdict.Short, entry.Studied);
        Assert.Contains("guidance", entry.What, StringComparison.Ordinal);
    }

    [Fact]
    public void The_rise_is_estimated_from_the_current_that_power_found()
    {
        var ledger = Tied(24);
        var entry = ledger.Entry("K-01..K-04/rise");
        var amperes = entry.Story.Work(entry).Inputs.Single(input => input.Name.StartsWith("I in a conductor", StringComparison.Ordinal)).Value!.Value;
        Assert.InRange(amperes, 0.33, 0.44);
        Assert.Contains("estimate", entry.What, StringComparison.Ordinal);
        Assert.Equal(0.18 * entry.Demand!.Value, entry.PlusMinus!.Value, 1e-9);
        Assert.Equal(15, entry.Limit);
    }

    [Fact]
    public void A_jacket_that_bears_little_above_the_air_bounds_the_rise()
    {
        var entry = Tied(60, air: "52 °C").Entry("K-01..K-04/rise");
        Assert.Equal(8, entry.Limit!.Value, 1e-9);
        Assert.Equal(Verdict.Short, entry.Studied);
        Assert.True(entry.Turn("cables tied together").AtLimit < 60);
    }

    [Fact]
    public void Below_sixty_watts_the_table_of_the_code_is_not_asked()
    {
        Assert.True(Tied(24).Has("K-01..K-04/ampacity"));
        Assert.False(Tied(24, "handset").Has("K-01..K-04/ampacity"));
    }

    [Fact]
    public void Where_the_table_has_no_figure_the_entry_is_unknown() =>
        Assert.Equal(Verdict.Unknown, Tied(200).Entry("K-01..K-04/ampacity").Studied);

    [Fact]
    public void Cables_without_power_have_no_rise() =>
        Assert.False(CableJob.Study("K-01..K-04: {from: closet, to: room, length: 30 m, cable: stout, bundle: 12}").Has("K-01..K-04/rise"));

    [Fact]
    public void Drops_without_a_bundle_have_no_entry_for_one() =>
        Assert.DoesNotContain(CableJob.Study("K-1: {from: closet, to: room, length: 30 m, cable: stout}").Entries, entry => entry.Kind == "bundle");
}

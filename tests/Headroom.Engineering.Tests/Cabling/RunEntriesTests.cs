using Headroom.Domain.Ledgers;

namespace Headroom.Engineering.Tests.Cabling;

/// <summary>Entries of copper runs on small sites; all figures are invented.</summary>
public sealed class RunEntriesTests
{
    private static Ledger One(string drop, string policy = "{}") => CableJob.Study($"K-1: {{from: closet, to: room, {drop}}}", policy: policy);

    [Theory]
    [InlineData("length: 90 m, cable: plain", "clear", 90)]
    [InlineData("length: 90.1 m, cable: plain", "short", 90)]
    [InlineData("length: 84 m, cable: plain, ambient: 40 °C", "short", 83.33)]
    [InlineData("length: 83 m, cable: plain, ambient: 40 °C", "clear", 83.33)]
    [InlineData("length: 84 m, cable: foil, ambient: 40 °C", "clear", 86.54)]
    [InlineData("length: 76 m, cable: plain, ambient: 60 °C", "short", 75)]
    public void A_link_may_be_as_long_as_its_air_and_screen_allow(string drop, string verdict, double longest)
    {
        var entry = One(drop).Entry("K-1/length");
        Assert.Equal(verdict, entry.Studied.ToString().ToLowerInvariant());
        Assert.Equal(longest, entry.Limit!.Value, 0.005);
    }

    [Fact]
    public void Pieces_count_each_with_its_own_cable_and_air()
    {
        var entry = One("pieces: [{length: 40 m, cable: plain, ambient: 60 °C}, {length: 45 m, cable: foil, ambient: 20 °C}]").Entry("K-1/length");
        Assert.Equal(85, entry.Demand);
        Assert.Equal(90.0 * 85 / (40 * 1.2 + 45), entry.Limit!.Value, 1e-9);
        Assert.Equal(Verdict.Short, entry.Studied);
        Assert.Contains("40 m of it lie in air of 60 °C", entry.Story.Say(entry), StringComparison.Ordinal);
        Assert.Contains(entry.Advice, advice => advice.StartsWith("take it another way than through the heat", StringComparison.Ordinal));
    }

    [Fact]
    public void A_pathway_lends_its_air_to_the_run() => Assert.Equal(
        75, CableJob.Study("K-1: {from: closet, to: room, length: 50 m, cable: plain, by: loft}", "pathways: {loft: {kind: ceiling, ambient: 60 °C, mains beside: none}}").Entry("K-1/length").Limit!.Value, 1e-9);

    [Fact]
    public void A_length_not_known_is_asked_for_once_and_never_zero()
    {
        var ledger = One("cable: plain");
        var entry = ledger.Entry("K-1/length");
        Assert.Equal((Verdict.Unknown, null), (entry.Studied, entry.Demand));
        Assert.Contains("how long is K-1?", entry.Question, StringComparison.Ordinal);
        Assert.Single(ledger.Entries, e => e.Studied == Verdict.Unknown);
    }

    [Fact]
    public void What_is_known_of_a_run_may_be_too_long_already()
    {
        var entry = One("cable: plain, pieces: [{length: 95 m}, {ambient: 20 °C}]").Entry("K-1/length");
        Assert.Equal(Verdict.Short, entry.Studied);
        var open = One("cable: plain, pieces: [{length: 60 m}, {ambient: 20 °C}]").Entry("K-1/length");
        Assert.Equal((Verdict.Unknown, 60), (open.Studied, open.Demand));
        Assert.Equal(new KnownParts(1, 2), open.Parts);
    }

    [Fact]
    public void A_cable_that_does_not_say_whether_it_is_screened_counts_as_unscreened_and_says_so()
    {
        var entry = One("length: 50 m, cable: bare, ambient: 40 °C").Entry("K-1/length");
        Assert.Equal(83.33, entry.Limit!.Value, 0.005);
        Assert.Contains(entry.Assumed, text => text.Contains("unscreened", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("length: 90 m", "5 m of patch-24", "5 m of patch-24", "clear", 10)]
    [InlineData("length: 90 m", "5 m of patch-26", "3.1 m of patch-26", "short", 8)]
    [InlineData("length: 90 m", "3 m of patch-28", "3 m of patch-28", "clear", 6.154)]
    [InlineData("length: 40 m", "3 m of patch-28", "13 m of patch-28", "short", 15)]
    [InlineData("length: 40 m", "2 m of patch-24", "23 m of patch-24", "short", 24)]
    public void Cords_may_be_as_long_as_the_link_their_gauge_and_the_rules_leave(string link, string panel, string device, string verdict, double longest)
    {
        var entry = One($"{link}, cable: plain, panel cord: {panel}, device cord: {device}").Entry("K-1/cords");
        Assert.Equal(verdict, entry.Studied.ToString().ToLowerInvariant());
        Assert.Equal(longest, entry.Limit!.Value, 0.0005);
    }

    [Fact]
    public void Cords_nobody_wrote_have_no_entry_and_one_nobody_wrote_is_assumed()
    {
        Assert.False(One("length: 40 m, cable: plain").Has("K-1/cords"));
        var entry = One("length: 40 m, cable: plain, panel cord: 2 m of patch-24").Entry("K-1/cords");
        Assert.Equal(4.5, entry.Demand);
        Assert.Contains("one cord not written", Assert.Single(entry.Assumed), StringComparison.Ordinal);
    }

    [Fact]
    public void A_cord_of_which_nobody_knows_the_length_or_the_gauge_is_asked_for()
    {
        Assert.Contains("how long are the cords", One("length: 40 m, cable: plain, panel cord: {cable: patch-24}").Entry("K-1/cords").Question, StringComparison.Ordinal);
        Assert.Contains("which cords", One("length: 40 m, cable: plain, panel cord: 2 m").Entry("K-1/cords").Question, StringComparison.Ordinal);
    }

    [Fact]
    public void A_pair_has_twice_the_ohms_of_a_conductor_at_twenty_degrees()
    {
        var entry = One("length: 90 m, cable: plain, ambient: 55 °C, panel cord: 2 m of patch-24, device cord: 3 m of patch-24").Entry("K-1/loop");
        Assert.Equal(2 * 90 * 0.084215, entry.Demand!.Value, 0.001);
        Assert.Equal(21, entry.Limit);
        Assert.Equal(95.0 / 90, One("length: 90 m, cable: plain, panel cord: 2 m of patch-24, device cord: 3 m of patch-24").Entry("K-1/channel-loop").Demand!.Value / entry.Demand.Value, 1e-9);
    }

    [Fact]
    public void A_cable_nobody_knows_is_asked_for_where_its_length_is_known()
    {
        var entry = One("length: 30 m").Entry("K-1/loop");
        Assert.Equal(Verdict.Unknown, entry.Studied);
        Assert.Contains("which cable is K-1?", entry.Question, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("length: 30 m, cable: clad", "K-1 ('clad': copper-clad)")]
    [InlineData("length: 30 m, cable: lean", "26 AWG, where 24 is the thinnest")]
    [InlineData("length: 30 m, cable: plain, device cord: 2 m of hair", "device cord of K-1 ('hair': 30 AWG, where 28 is the thinnest)")]
    public void A_cable_or_cord_that_the_standards_do_not_allow_is_short_however_short_it_is(string drop, string said)
    {
        var ledger = One(drop);
        var entry = ledger.Entry("K-1/conductors");
        Assert.Equal(Verdict.Short, entry.Studied);
        Assert.Contains(said, entry.Story.Say(entry), StringComparison.Ordinal);
        Assert.Equal(drop.Contains("clad", StringComparison.Ordinal), entry.Cautions.Contains(CautionTable.CopperClad));
        Assert.False(ledger.Has("K-1/cords"));
    }

    [Fact]
    public void A_run_of_what_is_allowed_has_no_entry_for_its_conductors() => Assert.False(One("length: 30 m, cable: plain").Has("K-1/conductors"));

    [Fact]
    public void Copper_clad_of_length_breaks_the_ohms_too()
    {
        var entry = One("length: 85 m, cable: clad").Entry("K-1/loop");
        Assert.Equal(Verdict.Short, entry.Studied);
        Assert.Contains("copper-clad", entry.Story.Say(entry), StringComparison.Ordinal);
    }

    [Fact]
    public void The_reserve_of_the_house_makes_a_long_link_tight() =>
        Assert.Equal(Verdict.Tight, One("length: 87 m, cable: plain", "{reserve: {length: 5 m}}").Entry("K-1/length").Studied);

    [Fact]
    public void Working_gives_back_the_figures_of_the_entry()
    {
        var entry = One("length: 60 m, cable: plain, ambient: 50 °C").Entry("K-1/length");
        var work = entry.Story.Work(entry);
        Assert.Equal(entry.Limit, work.Steps.Single(step => step.Name == "longest it may be").Value);
        Assert.Contains(work.Inputs, input => input is { Name: "length of K-1", Value: 60 } && input.Origin.StartsWith("job.yaml:", StringComparison.Ordinal));
        Assert.Contains("TIA-568", work.Source, StringComparison.Ordinal);
    }
}

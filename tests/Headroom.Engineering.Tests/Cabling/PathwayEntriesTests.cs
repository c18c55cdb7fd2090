using Headroom.Domain.Ledgers;

namespace Headroom.Engineering.Tests.Cabling;

/// <summary>Entries of conduits, trays and the mains beside them; all figures are invented.</summary>
public sealed class PathwayEntriesTests
{
    private static Ledger Pipe(string pipe, int cables = 3, string cable = "plain", string policy = "{}") => CableJob.Study(
        $"K-01..K-{cables:00}: {{from: closet, to: room, length: 30 m, cable: {cable}, by: pipe}}", $"pathways: {{pipe: {{{pipe}}}}}", policy: policy);

    [Theory]
    [InlineData(7, "plain", "26.6 mm", 36.81, 40, "clear")]
    [InlineData(8, "plain", "26.6 mm", 42.07, 40, "short")]
    [InlineData(2, "foil", "20.9 mm", 25.75, 31, "clear")]
    [InlineData(1, "foil", "15.8 mm", 22.53, 53, "clear")]
    public void A_conduit_is_judged_by_how_many_cables_it_holds(int cables, string cable, string inside, double fill, double limit, string verdict)
    {
        var entry = Pipe($"kind: conduit, inside: {inside}, already: none, mains beside: none", cables, cable).Entry("pipe/fill");
        Assert.Equal(fill, entry.Demand!.Value, 0.005);
        Assert.Equal(limit, entry.Limit!.Value, 1e-9);
        Assert.Equal(verdict, entry.Studied.ToString().ToLowerInvariant());
    }

    [Fact]
    public void Cables_that_lie_there_already_count()
    {
        var entry = Pipe("kind: conduit, inside: 26.6 mm, already: [2 x 6.1 mm, 1 x 7.5 mm], mains beside: none").Entry("pipe/fill");
        Assert.Equal(100 * (5 * 6.1 * 6.1 + 7.5 * 7.5) / (26.6 * 26.6), entry.Demand!.Value, 1e-6);
    }

    [Fact]
    public void A_piece_of_at_most_sixty_centimetres_may_be_fuller() =>
        Assert.Equal(60, Pipe("kind: conduit, inside: 26.6 mm, already: none, mains beside: none, longest pull: 0.5 m").Entry("pipe/fill").Limit!.Value, 1e-9);

    [Fact]
    public void A_tray_may_be_half_full()
    {
        var entry = Pipe("kind: tray, area: 50 cm2, already: none, mains beside: none", 60).Entry("pipe/fill");
        Assert.Equal((50.0, Verdict.Clear), (entry.Limit!.Value, entry.Studied));
        Assert.Equal(85, entry.Turn("cables in it").AtLimit);
    }

    [Fact]
    public void It_says_how_many_cables_go_in_and_which_conduit_would_hold_them()
    {
        var full = Pipe("kind: conduit, inside: 26.6 mm, already: none, mains beside: none", 9).Entry("pipe/fill");
        Assert.Equal((9.0, 7.0), (full.Turn("cables in it").Now!.Value, full.Turn("cables in it").AtLimit!.Value));
        Assert.Contains("1 1/4 in (35.1 mm inside)", full.Advice[0], StringComparison.Ordinal);
        Assert.Equal(Verdict.Clear, Pipe("kind: conduit, inside: 35.1 mm, already: none, mains beside: none", 9).Entry("pipe/fill").Studied);
    }

    [Theory]
    [InlineData("kind: conduit", "how wide is pipe inside?")]
    [InlineData("kind: tray", "how large is pipe inside?")]
    [InlineData("kind: conduit, inside: 35.1 mm", "what lies in pipe already?")]
    [InlineData("kind: conduit, inside: 35.1 mm, already: none", "which mains circuits lie beside pipe")]
    public void A_pathway_of_which_little_is_said_asks_one_question(string pipe, string question)
    {
        var asking = Assert.Single(Pipe(pipe).Entries, entry => entry.Studied == Verdict.Unknown);
        Assert.StartsWith(question, asking.Question, StringComparison.Ordinal);
    }

    [Fact]
    public void A_cable_nobody_measured_is_asked_for_and_what_is_known_may_be_too_much_already()
    {
        var asked = Pipe("kind: conduit, inside: 35.1 mm, already: none, mains beside: none", 3, "bare").Entry("pipe/fill");
        Assert.Equal((Verdict.Unknown, 0), (asked.Studied, asked.Demand));
        Assert.Contains("how thick are the cables of K-01, K-02 and K-03?", asked.Question, StringComparison.Ordinal);
        Assert.Equal(Verdict.Short, Pipe("kind: conduit, inside: 20.9 mm", 8).Entry("pipe/fill").Studied);
    }

    [Fact]
    public void A_pathway_that_no_drop_takes_has_no_entry() =>
        Assert.DoesNotContain(CableJob.Study("K-1: {from: closet, to: room, length: 30 m, cable: plain}", "pathways: {pipe: {kind: conduit}}").Entries, entry => entry.Subject == "pipe");

    [Theory]
    [InlineData("5 circuits of 16 A", "none", "39 mm", 40, "short")]
    [InlineData("5 circuits of 16 A", "none", "40 mm", 40, "clear")]
    [InlineData("1 circuit of 32 A three-phase", "plastic", "50 mm", 40, "clear")]
    [InlineData("40 circuits of 16 A", "basket", "200 mm", 225, "short")]
    [InlineData("[2 circuits of 16 A, 1 circuit of 40 A]", "perforated metal", "25 mm", 20, "clear")]
    public void The_distance_from_mains_follows_circuits_and_barrier(string mains, string barrier, string apart, double needed, string verdict)
    {
        var entry = Pipe($"kind: ceiling, mains beside: {mains}, barrier: {barrier}, apart: {apart}").Entry("pipe/separation");
        Assert.Equal(needed, entry.Demand!.Value, 1e-9);
        Assert.Equal(verdict, entry.Studied.ToString().ToLowerInvariant());
        Assert.Contains(CautionTable.MainsBeside, entry.Cautions);
    }

    [Fact]
    public void Screened_cable_may_lie_nearer_and_the_worst_cable_counts()
    {
        const string pipe = "kind: ceiling, mains beside: 14 circuits of 16 A, barrier: none, apart: 60 mm";
        Assert.Equal(50, Pipe(pipe, cable: "foil").Entry("pipe/separation").Demand!.Value, 1e-9);
        Assert.Equal(100, Pipe(pipe).Entry("pipe/separation").Demand!.Value, 1e-9);
        var blank = Pipe(pipe, cable: "blank").Entry("pipe/separation");
        Assert.Equal(300, blank.Demand!.Value, 1e-9);
        Assert.Contains("no category", Assert.Single(blank.Assumed), StringComparison.Ordinal);
    }

    [Fact]
    public void Solid_metal_between_needs_no_distance_and_no_measuring()
    {
        var entry = Pipe("kind: ceiling, mains beside: 9 circuits of 16 A, barrier: steel").Entry("pipe/separation");
        Assert.Equal((0.0, Verdict.Clear), (entry.Demand!.Value, entry.Studied));
    }

    [Fact]
    public void A_gap_that_is_enough_without_a_barrier_is_enough_and_less_is_a_question()
    {
        Assert.Equal(Verdict.Clear, Pipe("kind: ceiling, mains beside: 3 circuits, apart: 20 mm").Entry("pipe/separation").Studied);
        var open = Pipe("kind: ceiling, mains beside: 3 circuits, apart: 15 mm").Entry("pipe/separation");
        Assert.Equal(Verdict.Unknown, open.Studied);
        Assert.Contains("what lies between pipe and the mains", open.Question, StringComparison.Ordinal);
        Assert.Contains("measure the gap", Pipe("kind: ceiling, mains beside: 3 circuits of 16 A, barrier: none").Entry("pipe/separation").Question, StringComparison.Ordinal);
    }

    [Fact]
    public void Without_mains_or_with_fibre_alone_there_is_nothing_to_keep_apart()
    {
        Assert.False(Pipe("kind: ceiling, mains beside: none").Has("pipe/separation"));
        Assert.False(Pipe("kind: ceiling, mains beside: 9 circuits of 16 A", cable: "glass-4").Has("pipe/separation"));
    }

    [Theory]
    [InlineData("longest pull: 31 m", "HARD-PULL")]
    [InlineData("bends: 3", "HARD-PULL")]
    [InlineData("bend radius: 150 mm", "TIGHT-BEND")]
    [InlineData("longest pull: 30 m, bends: 2, bend radius: 160 mm", "")]
    public void Hard_pulls_and_tight_bends_are_cautions(string more, string caution) => Assert.Equal(
        caution, string.Join(' ', Pipe($"kind: conduit, inside: 26.6 mm, already: none, mains beside: none, {more}").Entry("pipe/fill").Cautions.Select(c => c.Code)));

    [Fact]
    public void A_cable_that_must_not_be_bent_so_tightly_counts_in_a_tray() => Assert.Contains(
        CautionTable.TightBend, Pipe("kind: tray, area: 50 cm2, already: none, mains beside: none, bend radius: 24 mm").Entry("pipe/fill").Cautions);
}

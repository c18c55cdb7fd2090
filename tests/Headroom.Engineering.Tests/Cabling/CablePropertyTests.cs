using System.Globalization;
using Headroom.Domain.Ledgers;

namespace Headroom.Engineering.Tests.Cabling;

/// <summary>What holds of every study of cables.</summary>
public sealed class CablePropertyTests
{
    private static readonly string[] Cables = ["plain", "stout", "foil", "bare"];

    private static readonly Gen<(double Hot, double Cool, double Celsius, string Cable)> Runs =
        Gen.Select(Gen.Double[5, 60], Gen.Double[5, 60], Gen.Double[20, 60], Gen.Int[0, 3]).Select((hot, cool, celsius, cable) => (hot, cool, celsius, Cables[cable]));

    private static string M(double value) => value.ToString("0.##########", CultureInfo.InvariantCulture);

    private static Ledger Run((double Hot, double Cool, double Celsius, string Cable) run, string policy = "{}") => CableJob.Study(
        $"K-1: {{from: closet, to: room, cable: {run.Cable}, panel cord: 2 m of patch-26, device cord: 3 m of patch-26, pieces: [{{length: {M(run.Hot)} m, ambient: {M(run.Celsius)} °C}}, {{length: {M(run.Cool)} m, ambient: 20 °C}}]}}",
        policy: policy);

    [Fact]
    public void At_the_length_up_to_which_it_holds_nothing_is_left_and_beyond_it_is_short() => Runs.Sample(
        run =>
        {
            var entry = Run(run).Entry("K-1/length");
            if (entry.Turn("length of piece 1").AtLimit is not (>= 0.2 and var longest))
                return;
            Assert.Equal(0, Run(run with { Hot = longest }).Entry("K-1/length").Left!.Value, 1e-6);
            Assert.Equal(Verdict.Short, Run(run with { Hot = longest + 0.01 }).Entry("K-1/length").Studied);
        },
        iter: Long.Samples(500));

    [Fact]
    public void At_the_length_up_to_which_the_reserve_holds_it_is_just_kept() => Runs.Sample(
        run =>
        {
            foreach (var policy in new[] { "{reserve: {length: 6 m}}", "{reserve: {length: 10 %}}" })
            {
                var entry = Run(run, policy).Entry("K-1/length");
                if (entry.Turn("length of piece 1").AtReserve is not (>= 0.2 and var longest))
                    continue;
                var there = Run(run with { Hot = longest }, policy).Entry("K-1/length");
                Assert.Equal(there.Reserve!.Value, there.Left!.Value, 1e-5);
            }
        },
        iter: Long.Samples(500));

    [Fact]
    public void At_the_air_up_to_which_it_holds_nothing_is_left() => Runs.Sample(
        run =>
        {
            if (Run(run).Entry("K-1/length").Turn("air around piece 1").AtLimit is not (> 20 and < 89 and var celsius))
                return;
            Assert.Equal(0, Run(run with { Celsius = celsius }).Entry("K-1/length").Left!.Value, 1e-5);
        },
        iter: Long.Samples(500));

    [Fact]
    public void A_warmer_or_longer_run_never_leaves_more_of_length_or_cords() => Runs.Sample(
        run =>
        {
            var (now, warm, far) = (Run(run), Run(run with { Celsius = run.Celsius + 1 }), Run(run with { Hot = run.Hot + 1 }));
            Assert.True(warm.Entry("K-1/length").Left <= now.Entry("K-1/length").Left + 1e-9);
            Assert.True(far.Entry("K-1/length").Left <= now.Entry("K-1/length").Left + 1e-9);
            Assert.True(far.Entry("K-1/cords").Left <= now.Entry("K-1/cords").Left + 1e-9);
        },
        iter: Long.Samples(500));

    [Fact]
    public void A_run_in_two_alike_pieces_is_a_run_of_one() => Gen.Select(Gen.Double[10, 80], Gen.Double[0.1, 0.9]).Sample(
        (metres, share) =>
        {
            var whole = CableJob.Study($"K-1: {{from: closet, to: room, cable: plain, length: {M(metres)} m, ambient: 47 °C}}");
            var parts = CableJob.Study($"K-1: {{from: closet, to: room, cable: plain, ambient: 47 °C, pieces: [{{length: {M(metres * share)} m}}, {{length: {M(metres * (1 - share))} m}}]}}");
            Assert.Equal(whole.Entry("K-1/length").Left!.Value, parts.Entry("K-1/length").Left!.Value, 1e-6);
            Assert.Equal(whole.Entry("K-1/loop").Demand!.Value, parts.Entry("K-1/loop").Demand!.Value, 1e-6);
        },
        iter: Long.Samples(500));

    [Fact]
    public void The_channel_has_the_ohms_of_its_link_and_its_cords() => Runs.Sample(
        run =>
        {
            var ledger = Run(run);
            var cords = 2 * 5 / (58 * Headroom.Engineering.Cabling.Conductor.AreaSquareMillimetres(26));
            Assert.Equal(cords, ledger.Entry("K-1/channel-loop").Demand!.Value - ledger.Entry("K-1/loop").Demand!.Value, 1e-6);
        },
        iter: Long.Samples(200));

    [Fact]
    public void Advice_on_cable_that_would_do_is_true_when_it_is_followed() => Runs.Sample(
        run =>
        {
            var entry = Run(run with { Cable = "plain" }).Entry("K-1/length");
            if (entry.Advice.Any(advice => advice.StartsWith("pull screened", StringComparison.Ordinal)))
                Assert.Equal(Verdict.Clear, Run(run with { Cable = "foil" }).Entry("K-1/length").Studied);
        },
        iter: Long.Samples(500));

    [Fact]
    public void One_more_cable_never_leaves_more_of_a_tray() => Gen.Int[1, 90].Sample(
        count => Tray(count + 1).Left < Tray(count).Left,
        iter: Long.Samples(200));

    private static LedgerEntry Tray(int count) => CableJob.Study(
        $"K-001..K-{count:000}: {{from: closet, to: room, length: 30 m, cable: plain, by: tray}}", "pathways: {tray: {kind: tray, area: 50 cm2, already: none, mains beside: none}}").Entry("tray/fill");

    [Fact]
    public void Entry_ids_are_unique_and_every_entry_can_be_told_worked_out_and_turned() => Runs.Sample(
        run =>
        {
            var entries = Run(run).Entries;
            Assert.Equal(entries.Count, entries.Select(entry => entry.Id).Distinct().Count());
            Assert.All(entries.Where(entry => entry.Discipline == "cabling"), entry =>
            {
                Assert.NotEmpty(entry.Story.Say(entry));
                Assert.NotEmpty(entry.Story.Work(entry).Source);
                Assert.All(entry.Story.Holds(entry), row => Assert.True(row.AtLimit is null || double.IsFinite(row.AtLimit.Value)));
            });
        },
        iter: Long.Samples(200));
}

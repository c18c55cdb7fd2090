using Headroom.Domain.Jobs;
using Headroom.Domain.Ledgers;

namespace Headroom.Engineering.Tests.Studies;

/// <summary>What holds of every study.</summary>
public sealed class StudyPropertyTests
{
    private static readonly Gen<(double Volts, double Metres, double Watts, double Least)> Runs =
        Gen.Select(Gen.Double[20, 56], Gen.Double[5, 95], Gen.Double[0.5, 9], Gen.Double[0.55, 0.8])
            .Select((volts, metres, watts, least) => (volts, metres, watts, volts * least));

    private static Site Run((double Volts, double Metres, double Watts, double Least) run, double metres) => new Site()
        .Switch("sw-1", Site.Model("m", 300, null, 24, Site.Passive(run.Volts, 9, always: true)))
        .Model(Site.Radio("radio", run.Least, 60, run.Watts)).Put("x", "radio", "sw-1/1", metres);

    [Fact]
    public void At_the_length_up_to_which_it_holds_nothing_is_left_and_beyond_it_is_short() => Runs.Sample(
        run =>
        {
            var entry = Run(run, run.Metres).Entry("power/x/volts");
            var row = entry.Story.Holds(entry).Single(h => h.Unit == "m");
            if (row.AtLimit is not { } longest)
                return;
            var there = Run(run, longest * 0.999999).Entry("power/x/volts");
            Assert.NotEqual(Verdict.Short, there.Studied);
            Assert.Equal(0, there.Left!.Value, 0.001);
            Assert.Equal(Verdict.Short, Run(run, longest * 1.001 + 0.001).Entry("power/x/volts").Studied);
        },
        iter: Long.Samples(2000));

    [Fact]
    public void At_the_draw_up_to_which_it_holds_nothing_is_left() => Runs.Sample(
        run =>
        {
            var entry = Run(run, run.Metres).Entry("power/x/volts");
            var row = entry.Story.Holds(entry).Single(h => h.Input == "draw of the device");
            var there = Run(run with { Watts = row.AtLimit!.Value * 0.999999 }, run.Metres).Entry("power/x/volts");
            Assert.Equal(0, there.Left!.Value, 0.001);
        },
        iter: Long.Samples(2000));

    [Fact]
    public void A_longer_run_never_leaves_more_volts_nor_asks_fewer_watts() => Runs.Sample(
        run =>
        {
            var (near, far) = (Run(run, run.Metres), Run(run, run.Metres * 1.3));
            Assert.True((far.Entry("power/x/volts").Limit ?? 0) <= near.Entry("power/x/volts").Limit!.Value + 1e-9);
            Assert.True(far.Entry("power/x/watts").Demand!.Value >= near.Entry("power/x/watts").Demand!.Value - 1e-9);
        },
        iter: Long.Samples(2000));

    private static readonly Gen<(ReservesBy By, AtStart? Start, AtRefusal At, bool Retries, int Aps, int Phones, double Budget)> Switches =
        Gen.Select(Gen.Enum<ReservesBy>(), Gen.Int[0, 3], Gen.Enum<AtRefusal>(), Gen.Bool, Gen.Int[0, 12], Gen.Int[0, 12], Gen.Double[10, 400])
            .Select((by, start, at, retries, aps, phones, budget) => (by, start == 3 ? null : (AtStart?)start, at, retries, aps, phones, budget));

    private static Site Of((ReservesBy By, AtStart? Start, AtRefusal At, bool Retries, int Aps, int Phones, double Budget) s) => new Site()
        .Switch("sw-1", s.Budget, PowerSetting.Silent with { ReservesBy = s.By, AtStart = s.Start, AtRefusal = s.At, Retries = s.Retries })
        .Model(Site.Device("ap", 4, 6.1, 11.7, 9.3)).Model(Site.Device("phone", 2, 2.3, 4.1, 3.7))
        .PutMany(s.Aps, "ap", "sw-1").PutMany(s.Phones, "phone", "sw-1", 13);

    [Fact]
    public void A_switch_is_short_exactly_when_its_demand_is_above_what_it_has_and_then_somebody_is_dark() => Switches.Sample(
        s =>
        {
            var entry = Of(s).Entry("power/sw-1/watts");
            Assert.Equal(entry.Demand > s.Budget + 1e-6, entry.Studied == Verdict.Short);
            var dark = entry.Story.Say(entry);
            Assert.Equal(entry.Studied == Verdict.Short, dark.Contains("dark", StringComparison.Ordinal) || dark.Contains("dropped", StringComparison.Ordinal));
        },
        iter: Long.Samples(2000));

    [Fact]
    public void One_more_device_never_asks_less() => Switches.Sample(
        s => Of(s).Entry("power/sw-1/watts").Demand <= Of(s with { Phones = s.Phones + 1 > 12 ? 12 : s.Phones + 1 }).Entry("power/sw-1/watts").Demand + 1e-9,
        iter: Long.Samples(2000));

    [Fact]
    public void Advice_on_a_setting_is_true_when_the_setting_is_made() => Switches.Sample(
        s =>
        {
            var entry = Of(s).Entry("power/sw-1/watts");
            var marker = "(reserves-by: ";
            var advice = entry.Advice.FirstOrDefault(a => a.Contains(marker, StringComparison.Ordinal) && a.Contains("mends it", StringComparison.Ordinal));
            if (advice is null)
                return;
            var name = advice[(advice.IndexOf(marker, StringComparison.Ordinal) + marker.Length)..].Split(')')[0].Replace("-", "", StringComparison.Ordinal);
            Assert.Equal(Verdict.Clear, Of(s with { By = Enum.Parse<ReservesBy>(name, ignoreCase: true) }).Entry("power/sw-1/watts").Studied);
        },
        iter: Long.Samples(2000));

    [Fact]
    public void The_same_job_gives_the_same_ledger_to_the_last_bit()
    {
        static string Text(Ledger ledger) => string.Join("\n", ledger.Entries.Select(e =>
            $"{e.Id} {e.Demand:R} {e.Limit:R} {e.Studied} {e.PlusMinus:R} {string.Join("|", e.Advice)} {e.Story.Say(e)} {string.Join("|", e.Story.Work(e).Steps)} {string.Join("|", e.Story.Holds(e))}"));
        var site = Of((ReservesBy.Negotiated, null, AtRefusal.Skip, true, 9, 7, 200));
        Assert.Equal(Text(site.Study()), Text(site.Study()));
    }

    [Fact]
    public void Entry_ids_are_unique_and_worst_comes_first() => Switches.Sample(
        s =>
        {
            var entries = Of(s).Study().Entries;
            Assert.Equal(entries.Count, entries.Select(e => e.Id).Distinct().Count());
            var ranks = entries.Select(e => e.Verdict == Verdict.Short ? 0 : e.Verdict == Verdict.Tight ? 1 : e.Verdict == Verdict.Unknown ? 2 : 3).ToList();
            Assert.Equal(ranks.Order(), ranks);
        },
        iter: Long.Samples(500));
}

using Headroom.Domain.Jobs;
using Headroom.Domain.Catalogues;
using Headroom.Domain.Quantities;
using Headroom.Engineering.Binding;
using Headroom.Engineering.Power;
using Headroom.Engineering.Standby;
using Headroom.Engineering.Tests.Studies;

namespace Headroom.Engineering.Tests.Standby;

/// <summary>The restart played through in time against what power counts for it at once, and what holds of every restart.</summary>
public sealed class RestartTests
{
    private static readonly Gen<PowerSetting> Settings = Gen.Select(Gen.Enum<ReservesBy>(), Gen.Enum<AtStart>(), Gen.Enum<AtRefusal>(), Gen.Bool, Gen.Enum<NegotiatedCounts>())
        .Select((by, start, refusal, retries, counts) => PowerSetting.Silent with { ReservesBy = by, AtStart = start, AtRefusal = refusal, Retries = retries, NegotiatedCounts = counts });

    private static readonly Gen<(PowerSetting Setting, int Budget, int[] Kinds)> Cases = Gen.Select(Settings, Gen.Int[0, 260], Gen.Int[0, 4].Array[0, 14]);

    [Fact]
    public void Who_stays_dark_and_whether_there_are_waves_is_what_power_counts_for_every_setting() => Cases.Sample(
        one =>
        {
            var (power, restart) = Played(one);
            var account = power.Switches[0].Counter.Count(power.Switches[0].Setting)[^1];
            var unit = restart.Units[0];
            Assert.Equal(PowerState.Start, account.State);
            Assert.Equal(account.Dark.Select(port => port.Id), unit.Dark.Select(port => port.Port.Id));
            Assert.True(unit.Waves <= 1 || account.Waves, "the timeline has waves that power knows nothing of");
            Assert.True(unit.Waves > 1 || !account.Waves || account.Dark.Count > 0, "power has waves that the timeline knows nothing of");
        },
        iter: Long.Samples(3000));

    [Fact]
    public void Never_is_more_set_aside_than_there_is_in_any_wave() => Cases.Sample(
        one =>
        {
            var (power, restart) = Played(one);
            var s = power.Switches[0];
            for (var wave = 1; wave <= restart.Units[0].Waves; wave++)
            {
                var reserved = restart.Units[0].Ports.Where(port => !port.Dark && port.Wave <= wave)
                    .Sum(port => (port.Wave == wave ? s.StartReserve(port.Port) : s.SettledReserve(port.Port)) ?? 0);
                Assert.True(reserved <= one.Budget + 1e-6);
            }
        },
        iter: Long.Samples(1000));

    [Fact]
    public void A_later_wave_has_power_only_when_the_one_before_has_settled() => Cases.Sample(
        one =>
        {
            var unit = Played(one).Restart.Units[0];
            foreach (var port in unit.Ports.Where(port => port.Wave > 1))
                Assert.All(unit.Ports.Where(other => !other.Dark && other.Wave < port.Wave), other => Assert.True(other.UpSeconds < port.OnSeconds));
        },
        iter: Long.Samples(1000));

    [Fact]
    public void The_peak_is_at_least_what_all_take_once_settled_and_at_most_all_starting_with_one_inrush() => Cases.Sample(
        one =>
        {
            var unit = Played(one).Restart.Units[0];
            var up = unit.Ports.Where(port => !port.Dark).ToList();
            var settled = up.Sum(port => port.Port.In(PowerState.Typical).PortWatts ?? 0);
            var most = up.Sum(port => Math.Max(port.Port.In(PowerState.Start).PortWatts ?? 0, port.Port.In(PowerState.Typical).PortWatts ?? 0));
            Assert.InRange(unit.Peak.Watts, settled - 1e-9, most + 54 * 0.9 + 1e-9);
        },
        iter: Long.Samples(1000));

    [Fact]
    public void Played_again_it_is_the_same() => Cases.Sample(
        one => Assert.Equal(Played(one).Restart.Units[0].Ports.Select(port => (port.Wave, port.OnSeconds, port.UpSeconds)), Played(one).Restart.Units[0].Ports.Select(port => (port.Wave, port.OnSeconds, port.UpSeconds))),
        iter: Long.Samples(200));

    [Fact]
    public void Ports_come_up_one_after_the_other_by_priority_then_number()
    {
        var unit = Played((PowerSetting.Silent with { EndpointPriorities = new Dictionary<string, Priority> { ["e-3"] = Priority.Critical } }, 200, [1, 1, 1])).Restart.Units[0];
        Assert.Equal(["e-3", "e-1", "e-2"], unit.Ports.OrderBy(port => port.OnSeconds).Select(port => port.Port.Id));
        // 60 s of start, half a second for all, 75 ms for each, and the charging of those before.
        Assert.Equal(60.575, unit.Ports[0].OnSeconds, 1e-9);
    }

    private static (PowerResult Power, RestartResult Restart) Played((PowerSetting Setting, int Budget, int[] Kinds) one)
    {
        EndpointModel Ask(EndpointModel model, double? watts) => model with { Power = model.Power! with { Asks = watts is { } w ? Site.W(w) : null, Autoclass = watts is null }, Boot = Make.Given(new Seconds(20 + model.Id.Length * 7)) };
        var models = new[]
        {
            Ask(Site.Device("a", 1, 1.5, 3, 2), null), Ask(Site.Device("bb", 2, 3, 5, 4), 5), Ask(Site.Device("ccc", 3, 5, 11, 8), 9),
            Ask(Site.Device("dddd", 4, 9, 20, 15), 18), Ask(Site.Device("eeeee", 4, 22, 25, 24), 25),
        };
        var site = new Site().Switch("sw-1", Site.Model("m", one.Budget) with { Boot = Make.Given(new Seconds(60)) }, one.Setting);
        foreach (var model in models)
            site.Model(model);
        for (var i = 0; i < one.Kinds.Length; i++)
            site.Put($"e-{i + 1}", models[one.Kinds[i]].Id, $"sw-1/{i + 1}");
        var bound = Binder.Bind(site.Job, site.Catalogue, DesignLineage.Whole(site.Job, "only")!, []);
        var power = PowerStudy.Of(bound);
        return (power, RestartStudy.Of(bound, power));
    }
}

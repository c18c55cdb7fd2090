using Headroom.Domain.Jobs;
using Headroom.Domain.Ledgers;
using Headroom.Domain.Quantities;
using Headroom.Engineering.Power;

namespace Headroom.Engineering.Remedies.Kinds;

/// <summary>A limit for each port: the least class power that still covers what its device takes in its worst state.</summary>
internal sealed class PortLimits : IRemedyKind
{
    // The class powers at the port: limits people set, since equipment offers them by class.
    private static readonly double[] Steps = [4, 7, 15.4, 30, 45, 60, 75];

    /// <inheritdoc/>
    public IEnumerable<RemedyIdea> For(LedgerEntry entry, RemedyCase at)
    {
        if (!Entries.IsOfPower(entry))
            yield break;
        var concerned = at.SwitchesOf(entry).Select(unit => unit.Id).ToHashSet();
        foreach (var power in at.Power.Switches.Where(power => concerned.Contains(power.Switch.Id) && power.Switch.Model.SettingsOffered.Contains(ReservesBy.PortLimit)))
        {
            var limits = power.Ports.Where(port => LimitOf(port) is not null).ToDictionary(port => port.Port.Port, port => LimitOf(port)!.Value);
            if (limits.Count == 0)
                continue;
            var setting = PowerSetting.Silent with { PortLimits = limits.ToDictionary(pair => pair.Key, pair => Delta.Value<Watts>(Words.Of(pair.Value, "W"))) };
            var words = Words.List([.. limits.GroupBy(pair => pair.Value).OrderBy(group => group.Key).Select(group => $"{Words.Of(group.Key)} W on {Words.Runs(group.Select(pair => pair.Key))}")]);
            var id = power.Switch.Id;
            yield return Idea(at, id, $"{id}: port limits of {words}", setting);
            if (power.Setting.ReservesBy != ReservesBy.PortLimit)
                yield return Idea(at, id, $"{id}: reserve by port limit, limits of {words}", setting with { ReservesBy = ReservesBy.PortLimit });
        }
    }

    private static RemedyIdea Idea(RemedyCase at, string id, string text, PowerSetting setting) =>
        new("port limits", text, Delta.Switch(at, Delta.Switch(id) with { Setting = setting })) { BuysNothing = true, Minutes = (5, 20) };

    private static double? LimitOf(PoweredPort port)
    {
        if (port.ClassWatts is not { } now || DeviceDraws.Of(port.Endpoint, PowerState.Peak) is null)
            return null;
        var most = DeviceDraws.States.Max(state => port.In(state).PortWatts ?? double.PositiveInfinity);
        var step = Steps.FirstOrDefault(watts => watts >= most, double.PositiveInfinity);
        return step < Math.Min(now, port.Feed.LimitWatts ?? double.PositiveInfinity) ? step : null;
    }
}

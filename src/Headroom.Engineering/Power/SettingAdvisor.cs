using Headroom.Domain.Catalogues;
using Headroom.Domain.Findings;
using Headroom.Domain.Jobs;
using Headroom.Domain.Ledgers;
using Headroom.Domain.Quantities;

namespace Headroom.Engineering.Power;

/// <summary>Finds the setting that mends a shortage at no cost, by counting again under each; then what a bigger supply would do.</summary>
internal sealed class SettingAdvisor(SwitchPower s, Reserve reserve)
{
    // The class powers at the port: limits people set, since equipment offers them by class.
    private static readonly double[] LimitSteps = [4, 7, 15.4, 30, 45, 60, 75];

    private (bool Done, string? Words) _best;

    /// <summary>The reserve it advises for.</summary>
    public Reserve Reserve => reserve;

    /// <summary>Supplies of the same model that leave more for the ports, the smallest first.</summary>
    public IEnumerable<SupplyModel> Bigger => s.Switch.Model.Supplies
        .Where(supply => supply.PortWatts?.Value.Value > s.BudgetWatts)
        .OrderBy(supply => supply.PortWatts!.Value.Value);

    /// <summary>What would mend it, costless first; the same verdict is not offered twice.</summary>
    public List<string> Advice()
    {
        var advice = new List<string>();
        if (BestSetting() is { } best)
            advice.Add(best);
        if (Bigger.FirstOrDefault(supply => Verdict(s.Worst, supply.PortWatts!.Value.Value) is Domain.Ledgers.Verdict.Clear) is { } bigger)
            advice.Add($"the supply '{bigger.Id}' of {s.Switch.Model.Id} leaves {Words.Of(bigger.PortWatts!.Value.Value)} W and would keep the reserve");
        if (advice.Count == 0 && s.BudgetWatts is { } budget)
            advice.Add($"move devices that take {Words.Of(s.Worst.DemandWatts - budget + reserve.Of(budget))} W to another switch, an injector or a midspan");
        return advice;
    }

    /// <summary>The setting that helps most at no cost, in words; null when none helps.</summary>
    public string? BestSetting()
    {
        // Asked for by the entry and by the answers: counted once.
        if (!_best.Done)
            _best = (true, Find());
        return _best.Words;
    }

    private string? Find()
    {
        var now = Own();
        var best = Candidates()
            .Select(candidate => (candidate.Words, candidate.Account, Verdict: Verdict(candidate.Account, s.BudgetWatts!.Value)))
            .Where(candidate => candidate.Account.Whole && candidate.Verdict < now)
            .OrderBy(candidate => candidate.Verdict)
            .FirstOrDefault();
        return best.Words is null ? null
            : $"{best.Words} {(best.Verdict == Domain.Ledgers.Verdict.Clear ? "mends it" : "keeps the limit, not the reserve,")} at no cost: it then asks {Words.Of(best.Account.DemandWatts)} W at its most";
    }

    private Verdict Own() => s.BudgetWatts is { } budget ? Verdict(s.Worst, budget) : Domain.Ledgers.Verdict.Unknown;

    private Verdict Verdict(StateAccount account, double budget) => account.Dark.Count > 0 && account.DemandWatts > budget
        ? Domain.Ledgers.Verdict.Short
        : Judge.Of(account.DemandWatts, budget, reserve);

    private IEnumerable<(string Words, StateAccount Account)> Candidates()
    {
        if (s.BudgetWatts is null)
            yield break;
        if (Offers(ReservesBy.PortLimit) && WithLimits() is { } limited)
            yield return limited;
        foreach (var by in s.Switch.Model.SettingsOffered.Where(by => by != s.Setting.ReservesBy && by != ReservesBy.PortLimit))
            yield return ($"reserving {PowerWords.Of(by)} (reserves-by: {PowerWords.Name(by)})", SwitchCounter.WorstOf(s.Counter.Count(s.Setting.By(by))));
    }

    private bool Offers(ReservesBy by) => s.Switch.Model.SettingsOffered.Contains(by);

    // Each port gets the least class power that still covers what its device takes in its worst state.
    private (string Words, StateAccount Account)? WithLimits()
    {
        var limited = new List<(int Port, double Watts)>();
        var ports = s.Counter.Served.Select(port =>
        {
            if (LimitOf(port) is not { } watts)
                return port;
            limited.Add((port.Port.Port, watts));
            return port with { Feed = port.Feed with { Limit = Tried(watts) }, GrantWatts = Math.Min(watts, port.GrantWatts ?? watts) };
        }).ToList();
        if (limited.Count == 0)
            return null;
        var words = limited.GroupBy(l => l.Watts).OrderBy(g => g.Key)
            .Select(g => $"{Words.Of(g.Key)} W on port{(g.Count() == 1 ? "" : "s")} {Words.Runs(g.Select(l => l.Port))}");
        var account = SwitchCounter.WorstOf(new SwitchCounter(s.Switch, ports, s.BudgetWatts, s.Counter.Measured).Count(s.Setting));
        return ($"a port limit of {Words.List([.. words])}", account);
    }

    private static Given<Watts> Tried(double watts) => new(new Watts(watts), $"{Words.Of(watts)} W", Origin.Assumed, null, Place.None);

    private static double? LimitOf(PoweredPort port)
    {
        if (port.ClassWatts is not { } now || DeviceDraws.Of(port.Endpoint, PowerState.Peak) is null)
            return null;
        var most = DeviceDraws.States.Max(state => port.In(state).PortWatts ?? double.PositiveInfinity);
        var step = LimitSteps.FirstOrDefault(watts => watts >= most, double.PositiveInfinity);
        return step < Math.Min(now, port.Feed.LimitWatts ?? double.PositiveInfinity) ? step : null;
    }
}

using Headroom.Domain.Jobs;
using Headroom.Engineering.Binding;
using Headroom.Engineering.MeasuredDraws;

namespace Headroom.Engineering.Power;

/// <summary>Counts the watts of one switch in every state under one setting. Watts of two switches never meet here.</summary>
public sealed class SwitchCounter
{
    private readonly PoweredPort[] _served;
    private readonly Priority[] _priorities;
    private readonly double? _budget;
    private readonly DrawnPorts?[] _drawn = new DrawnPorts?[DeviceDraws.States.Count];

    /// <summary>Prepares to count.</summary>
    /// <param name="s">The switch.</param>
    /// <param name="ports">Its ports on which something asks for power, in any order.</param>
    /// <param name="budgetWatts">What there is for all of them [W]; null when not known.</param>
    /// <param name="measured">What was read of draws; null when nothing was.</param>
    public SwitchCounter(BoundSwitch s, IEnumerable<PoweredPort> ports, double? budgetWatts, MeasuredDrawResult? measured = null)
    {
        Measured = measured;
        _budget = budgetWatts;
        // Served first: the higher priority, then the lower port number, as switches do unless told otherwise (RFC 3621 leaves it open).
        _served = [.. ports.OrderBy(port => PriorityOf(s, port)).ThenBy(port => port.Port.Port)];
        _priorities = Array.ConvertAll(_served, port => PriorityOf(s, port));
    }

    /// <summary>What was read of draws; null when nothing was.</summary>
    public MeasuredDrawResult? Measured { get; }

    /// <summary>The ports in the order in which they are served.</summary>
    public IReadOnlyList<PoweredPort> Served => _served;

    /// <summary>The priority of a port, by its number, its endpoint or its drop.</summary>
    /// <param name="s">The switch.</param>
    /// <param name="port">The port.</param>
    /// <returns>The priority; low when nobody says otherwise.</returns>
    public static Priority PriorityOf(BoundSwitch s, PoweredPort port)
    {
        var setting = s.Setting;
        if (setting.Priorities.TryGetValue(port.Port.Port, out var byPort))
            return byPort;
        if (setting.EndpointPriorities.Count == 0)
            return Priority.Low;
        return setting.EndpointPriorities.TryGetValue(port.Id, out var byId) ? byId
            : port.Endpoint.Endpoint.Drop is { } drop && setting.EndpointPriorities.TryGetValue(drop, out var byDrop) ? byDrop
            : Priority.Low;
    }

    /// <summary>Counts every state that differs on this switch, the restart last.</summary>
    /// <param name="setting">The setting.</param>
    /// <returns>One account a state: typical and peak always, night and frost where a device has them, start always.</returns>
    public IReadOnlyList<StateAccount> Count(WholeSetting setting)
    {
        var accounts = new List<StateAccount>(5);
        StateAccount? same = null;
        foreach (var state in DeviceDraws.States)
        {
            if (state is PowerState.Night or PowerState.Frost && !_served.Any(port => DeviceDraws.Has(port.Endpoint, state)))
                continue;
            if (state == PowerState.Start)
                accounts.Add(Restart(setting));
            else if (setting.ReservesBy == ReservesBy.Measured)
                accounts.Add(Running(setting, state));
            else
                accounts.Add(same = same is null ? Running(setting, state) : same with { State = state });
        }

        return accounts;
    }

    /// <summary>What the readings say of a state; null when none of its devices was read in it.</summary>
    /// <param name="state">The state.</param>
    /// <returns>The total of the devices that were read.</returns>
    public DrawnPorts? Drawn(PowerState state) => Measured is null ? null : (_drawn[(int)state] ??= DrawnPorts.Of(_served, Measured, state)) is { Total.Groups.Count: > 0 } some ? some : null;

    /// <summary>What a running port counts for.</summary>
    /// <param name="port">The port.</param>
    /// <param name="setting">The setting.</param>
    /// <param name="state">The state.</param>
    /// <returns>The watts [W], where draws count and were read the mean of the model; null when they hang on something nobody knows.</returns>
    internal double? AskOf(PoweredPort port, WholeSetting setting, PowerState state) =>
        setting.ReservesBy == ReservesBy.Measured && Measured is not null && DrawnPorts.MeanOf(port, Measured, state) is { } mean ? mean : PortReserve.Running(port, setting, state);

    /// <summary>The account that asks most; of those that ask the same, the later one.</summary>
    /// <param name="accounts">The accounts.</param>
    /// <returns>The worst.</returns>
    public static StateAccount WorstOf(IReadOnlyList<StateAccount> accounts) =>
        accounts.Aggregate((worst, next) => next.DemandWatts >= worst.DemandWatts ? next : worst);

    private StateAccount Running(WholeSetting setting, PowerState state)
    {
        var asks = new double[_served.Length];
        var (sum, known) = Ask(asks, port => AskOf(port, setting, state));
        if (setting.ReservesBy == ReservesBy.Measured && Drawn(state) is { } drawn)
            sum += drawn.OverMeansWatts;
        var dark = _budget is not { } budget || sum <= budget ? []
            : setting.ReservesBy == ReservesBy.Measured ? Shed(asks, (sum, budget), setting.ShedOrder)
            : Refused(PortBudget.Fill(budget, asks, setting.AtRefusal).Granted);
        return new StateAccount(state, sum, known, asks.Length, dark, Waves: false);
    }

    private StateAccount Restart(WholeSetting setting)
    {
        var asks = new double[_served.Length];
        var (sum, known) = Ask(asks, port => PortReserve.Starting(port, setting));
        if (_budget is not { } budget || sum <= budget)
            return new StateAccount(PowerState.Start, sum, known, asks.Length, [], Waves: false);
        var on = PortBudget.Fill(budget, asks, setting.AtRefusal).Granted;
        if (!setting.Retries)
            return new StateAccount(PowerState.Start, sum, known, asks.Length, Refused(on), Waves: false);
        var settled = new double[_served.Length];
        var (running, _) = Ask(settled, port => PortReserve.Running(port, setting, PowerState.Typical));
        ComeUp((asks, settled), on, budget);
        // Enough in any order: everyone else has settled when the one that falls back furthest comes up.
        var enough = Math.Min(sum, running + asks.Zip(settled, (start, run) => Math.Max(0, start - run)).Max());
        var late = Refused(on);
        // In waves everything there is gets used, and nothing of a reserve is kept while it lasts.
        return new StateAccount(PowerState.Start, late.Count == 0 ? budget : enough, known, asks.Length, late, Waves: true)
        {
            LeastWatts = late.Count == 0 ? Math.Min(enough, budget) : enough,
            AtOnceWatts = sum,
        };
    }

    // Refused ports are tried again, in order, as others settle; ends when a round brings nobody up.
    private static void ComeUp((double[] Start, double[] Settled) asks, bool[] on, double budget)
    {
        for (var progress = true; progress;)
        {
            progress = false;
            var reserved = asks.Settled.Where((_, i) => on[i]).Sum();
            for (var i = 0; i < on.Length; i++)
            {
                if (on[i] || reserved + asks.Start[i] > budget + PortBudget.GuardWatts)
                    continue;
                on[i] = progress = true;
                reserved += asks.Start[i];
            }
        }
    }

    private (double Sum, int Known) Ask(double[] asks, Func<PoweredPort, double?> reserve)
    {
        var (sum, known) = (0.0, 0);
        for (var i = 0; i < asks.Length; i++)
        {
            if (reserve(_served[i]) is not { } watts)
                continue;
            asks[i] = watts;
            sum += watts;
            known++;
        }

        return (sum, known);
    }

    private List<PoweredPort> Refused(bool[] granted) => [.. _served.Where((_, i) => !granted[i])];

    private List<PoweredPort> Shed(double[] asks, (double Sum, double Budget) watts, ShedOrder order)
    {
        var sign = order == ShedOrder.HighestPortFirst ? -1 : 1;
        var line = Enumerable.Range(0, asks.Length).OrderByDescending(i => _priorities[i]).ThenBy(i => sign * _served[i].Port.Port);
        var dropped = new List<PoweredPort>();
        var sum = watts.Sum;
        foreach (var i in line)
        {
            if (sum <= watts.Budget)
                break;
            sum -= asks[i];
            dropped.Add(_served[i]);
        }

        return dropped;
    }
}

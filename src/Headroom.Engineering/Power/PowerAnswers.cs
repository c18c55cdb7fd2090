using Headroom.Domain.Jobs;
using Headroom.Domain.Ledgers;

namespace Headroom.Engineering.Power;

/// <summary>Answers the questions people ask about a switch's watts.</summary>
internal static class PowerAnswers
{
    /// <summary>The answers for every switch that powers something.</summary>
    public static IEnumerable<Answer> Of(PowerResult result)
    {
        var reserve = result.Bound.Job.Policy.ReserveOf("power");
        foreach (var s in result.Switches.Where(s => s.Counter.Served.Count > 0 && s.BudgetWatts is not null))
        {
            yield return Bigger(s, s.BudgetWatts!.Value, reserve);
            yield return More(s, s.BudgetWatts.Value, reserve);
            if (s.Worst.DemandWatts > s.BudgetWatts)
                yield return new Answer(s.Switch.Id, "Which setting mends it at no cost?", Words.Capital(s.AdvisorFor(reserve).BestSetting() ?? "none of those this model offers") + ".");
        }
    }

    private static Answer Bigger(SwitchPower s, double budget, Reserve reserve)
    {
        var advisor = s.AdvisorFor(reserve);
        var ask = $"{s.Switch.Id} asks at most {(s.Worst.Whole ? "" : "what is known, ")}{Words.Of(s.Worst.DemandWatts)} W of {Words.Of(budget)} W, {PowerWords.Of(s.Worst.State)}, {PowerWords.Counted(s.Setting, s.Worst.State)}";
        var turn = TurningPoint(s, budget, reserve);
        var bigger = advisor.Bigger.FirstOrDefault();
        const string question = "Is a bigger supply needed?";
        if (!s.Worst.Whole)
            return new Answer(s.Switch.Id, question, $"Nobody can say yet: {ask}, and {s.Worst.All - s.Worst.Known} of {s.Worst.All} are not known.");
        var name = bigger is null ? "this model has no bigger one" : $"the next one, '{bigger.Id}', leaves {Words.Of(bigger.PortWatts!.Value.Value)} W";
        return s.Worst.DemandWatts <= budget - reserve.Of(budget)
            ? new Answer(s.Switch.Id, question, $"No: {ask}, and the reserve is kept. {turn}")
            : new Answer(s.Switch.Id, question, advisor.BestSetting() is { } setting
                ? $"Not if {setting}. Otherwise yes: {ask}; {name}. {turn}"
                : $"Yes, or fewer devices: {ask}; {name}. {turn}");
    }

    private static string TurningPoint(SwitchPower s, double budget, Reserve reserve)
    {
        var count = s.Counter.Served.Count;
        var kept = (budget - reserve.Of(budget)) / count;
        return $"By what is drawn, it would be from {Words.Of(kept)} W at each of the {count} ports with the reserve kept, from {Words.Of(budget / count)} W without.";
    }

    private static Answer More(SwitchPower s, double budget, Reserve reserve)
    {
        var ports = s.Switch.PoweredPorts - s.Ports.Count;
        var left = budget - s.Worst.DemandWatts;
        var rows = s.Counter.Served.GroupBy(port => port.Endpoint.Model.Id).Select(group => (Model: group.Key, Watts: group.Max(port => Ask(s, port))))
            .Where(row => row.Watts > 0)
            .Select(row => (row.Model, row.Watts, More: Fit(left - reserve.Of(budget), row.Watts!.Value, ports)))
            .ToList();
        var fitting = rows.Where(row => row.More > 0).Select(row => $"{row.More} {row.Model} ({Words.Of(row.Watts!.Value)} W each)").ToList();
        var text = !s.Worst.Whole ? "Nobody can say before the missing draws are known."
            : rows.Count == 0 ? "No draw is known."
            : fitting.Count == 0 ? $"None with the reserve kept: {Words.Of(Math.Max(0, left))} W are left, {Words.Of(reserve.Of(budget))} W of them the reserve; {Words.Count(ports, "powered port")} left."
            : $"With the reserve kept: {string.Join(", or ", fitting)}; {Words.Count(ports, "powered port")} left.";
        return new Answer(s.Switch.Id, "How many more devices fit?", text);
    }

    private static int Fit(double left, double watts, int ports) => Math.Max(0, Math.Min(ports, (int)Math.Floor(left / watts + 1e-9)));

    private static double? Ask(SwitchPower s, PoweredPort port) => s.Worst.State == PowerState.Start
        ? PortReserve.Starting(port, s.Setting)
        : PortReserve.Running(port, s.Setting, s.Worst.State);
}

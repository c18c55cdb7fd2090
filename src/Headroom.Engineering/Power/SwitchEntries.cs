using Headroom.Domain.Jobs;
using Headroom.Domain.Ledgers;

namespace Headroom.Engineering.Power;

/// <summary>Entries for the watts, powered ports and supply of a switch.</summary>
internal static class SwitchEntries
{
    /// <summary>The entries of one switch; none when it can power nothing and nothing asks.</summary>
    public static IEnumerable<LedgerEntry> Of(SwitchPower s, PowerResult result, Policy policy)
    {
        if (s.Switch.PoweredPorts > 0)
        {
            yield return Watts(s, policy);
            yield return PoweredPorts(s, policy);
        }

        if (s.Switch.Supply?.Rated is not null && (s.Switch.PoweredPorts > 0 || s.Supply.BaseWatts is not null))
            yield return Supply(s, policy);
    }

    private static LedgerEntry Watts(SwitchPower s, Policy policy)
    {
        var reserve = policy.ReserveOf("power");
        var parts = s.Worst.Whole ? null : new KnownParts(s.Worst.Known, s.Worst.All);
        var dark = s.Worst.Dark.Count > 0;
        var verdict = dark && s.BudgetWatts is not null ? Verdict.Short : Judge.Of(s.Worst.DemandWatts, s.BudgetWatts, reserve, parts);
        var advisor = s.AdvisorFor(reserve);
        return new LedgerEntry
        {
            Id = $"power/{s.Switch.Id}/watts",
            Discipline = PowerLedger.Discipline,
            Subject = s.Switch.Id,
            Quantity = "watts",
            What = $"watts, {PowerWords.Brief(s.Worst.State)}, {PowerWords.BriefCount(s.Setting, s.Worst.State)}",
            Unit = "W",
            Kind = "power",
            Demand = s.Worst.DemandWatts,
            Limit = s.BudgetWatts,
            Reserve = s.BudgetWatts is { } budget ? reserve.Of(budget) : null,
            Studied = verdict,
            Parts = parts,
            Question = verdict == Verdict.Unknown ? Question(s) : null,
            Assumed = Assumed(s),
            Beside = new LateList<BesideRow>(() => SwitchBeside.Of(s)),
            Advice = verdict is Verdict.Short or Verdict.Tight ? new LateList<string>(advisor.Advice) : [],
            Cautions = verdict is Verdict.Short or Verdict.Tight && advisor.Bigger.Any() ? [CautionTable.Mains] : [],
            Story = new SwitchStory(s, reserve),
        };
    }

    private static LedgerEntry PoweredPorts(SwitchPower s, Policy policy)
    {
        var reserve = policy.ReserveOf("ports");
        double used = s.Ports.Count(port => port.Fault is PortFault.None or PortFault.TooManyVolts);
        double there = s.Switch.PoweredPorts;
        var growth = policy.Growth.TryGetValue("powered ports", out var more) ? used + (more.Amount ?? Math.Ceiling(more.Share!.Value * used)) : (double?)null;
        return new LedgerEntry
        {
            Id = $"power/{s.Switch.Id}/powered-ports",
            Discipline = PowerLedger.Discipline,
            Subject = s.Switch.Id,
            Quantity = "powered-ports",
            What = "ports that give power",
            Unit = "ports",
            Kind = "ports",
            Demand = used,
            Peak = growth,
            Limit = there,
            Reserve = reserve.Of(there),
            Studied = Judge.Known(used, there, reserve.Of(there)),
            Story = new PortCountStory(s, reserve, growth),
        };
    }

    private static LedgerEntry Supply(SwitchPower s, Policy policy)
    {
        var reserve = policy.ReserveOf("power");
        var rated = s.Switch.Supply!.Rated!.Value.Value;
        var output = s.Supply.BaseWatts + s.Supply.WorstPortWatts / s.Supply.PathEfficiency;
        var verdict = Judge.Of(output, rated, reserve);
        return new LedgerEntry
        {
            Id = $"power/{s.Switch.Id}/supply",
            Discipline = PowerLedger.Discipline,
            Subject = s.Switch.Id,
            Quantity = "supply",
            What = "supply output, running",
            Unit = "W",
            Kind = "power",
            Demand = output,
            Limit = rated,
            Reserve = reserve.Of(rated),
            Studied = verdict,
            Question = verdict == Verdict.Unknown
                ? s.Supply.BaseWatts is null ? $"what does {s.Switch.Model.Id} draw by itself? read it at the socket with nothing plugged in" : "a draw of a device is missing: see its entry"
                : null,
            Cautions = s.Switch.Supply.Input == "dc" ? [CautionTable.DirectCurrent] : [],
            Story = new SupplyStory(s, reserve),
        };
    }

    private static string Question(SwitchPower s)
    {
        if (s.BudgetWatts is null)
            return $"what does the supply of {s.Switch.Id} leave for its ports? its plate or its maker says";
        var models = s.Counter.Served.Where(port => s.AskOf(port) is null).Select(port => port.Endpoint.Model.Id).Distinct().ToList();
        return $"what do {Words.List(models)} draw or ask for? their plates or their makers say";
    }

    private static List<string> Assumed(SwitchPower s)
    {
        var assumed = new List<string>();
        if (s.Setting.Assumed)
            assumed.Add($"nobody says what {s.Switch.Id} reserves by: class taken");
        if (s.Setting.ReservesBy == ReservesBy.Measured && s.Worst.State != PowerState.Start && s.Counter.Drawn(s.Worst.State) is { Total.IsPriorDriven: true } drawn)
            assumed.Add(drawn.Note);
        var free = s.Ports.Count(port => port.Port.Assumed);
        if (free > 0)
            assumed.Add($"{Words.Count(free, "endpoint")} not patched: free ports that suit were taken");
        return assumed;
    }
}

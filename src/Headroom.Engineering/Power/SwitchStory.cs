using Headroom.Domain.Jobs;
using Headroom.Domain.Ledgers;
using Headroom.Engineering.Binding;

namespace Headroom.Engineering.Power;

/// <summary>Tells what a switch is asked for and what it has, and how that was counted.</summary>
internal sealed class SwitchStory(SwitchPower s, Reserve reserve) : IEntryStory
{
    /// <inheritdoc/>
    public string Say(LedgerEntry entry)
    {
        var least = s.Worst.Whole ? "" : "at least ";
        var asks = $"{PowerWords.Of(s.Worst.State)} {s.Switch.Id} asks {least}{Words.Of(s.Worst.DemandWatts)} W {PowerWords.Counted(s.Setting, s.Worst.State)}";
        var has = s.BudgetWatts is { } budget ? $"has {Words.Of(budget)} W" : "nobody knows what it has";
        var dark = PowerWords.Dark(s.Worst, s.Setting);
        var waves = s.Worst is { Waves: true, Dark.Count: 0 } ? $", so its ports come up in waves: at once they would ask {Words.Of(s.Worst.AtOnceWatts)} W" : "";
        return $"{asks} and {has}{(dark.Length == 0 ? waves : $", so {dark}")}.";
    }

    /// <inheritdoc/>
    public Working Work(LedgerEntry entry)
    {
        var inputs = new List<WorkingInput>
        {
            new("watts for all ports together", s.BudgetWatts, "W", s.Switch.Supply?.PortWatts is { } watts ? $"supply '{s.Switch.Supply.Id}' of {s.Switch.Model.Id}, {Origins.Of(watts)}" : "not known"),
            new("reserve wanted", entry.Reserve, "W", reserve.At == Domain.Findings.Place.None ? $"house rule by default, {reserve.Written}" : $"{reserve.Written}, {reserve.At}"),
        };
        var steps = new List<WorkingStep>();
        foreach (var group in s.Counter.Served.GroupBy(port => (Ask: PowerWords.Ask(port), port.Endpoint.Model.Id, Watts: s.AskOf(port))))
            steps.Add(Row(group.Key, [.. group]));
        if (s.Setting.ReservesBy == ReservesBy.Measured && s.Worst.State != PowerState.Start && s.Counter.Drawn(s.Worst.State) is { } drawn)
            steps.AddRange(drawn.Steps());
        steps.Add(new(s.Worst.Waves ? "asked at once" : "asked", "the sum", s.Worst.AtOnceWatts, "W"));
        if (s.Worst.Waves)
            steps.Add(new("asked in waves", s.Worst.Dark.Count == 0 ? $"all there is; {Words.Of(s.Worst.LeastWatts)} W would be enough" : "while all others have settled", s.Worst.DemandWatts, "W"));
        if (s.BudgetWatts is { } budget)
            steps.Add(new("left", $"{Words.Of(budget)} − {Words.Of(s.Worst.DemandWatts)}", budget - s.Worst.DemandWatts, "W"));
        if (s.Worst.Dark.Count > 0)
            steps.Add(new(s.Worst.State != PowerState.Start && s.Setting.ReservesBy == ReservesBy.Measured ? "dropped" : "dark", PowerWords.Ports(s.Worst.Dark), null, ""));
        return new Working(Formula(), inputs, steps, Source());
    }

    /// <inheritdoc/>
    public IReadOnlyList<Holds> Holds(LedgerEntry entry)
    {
        if (s.BudgetWatts is not { } budget || !s.Worst.Whole)
            return [];
        var kept = budget - reserve.Of(budget);
        var rows = new List<Holds> { new("watts of the supply for its ports", "W", budget, s.Worst.LeastWatts, SupplyKeeping(s.Worst.AtOnceWatts), UpTo: false) };
        if (s.Worst.Waves)
            return rows;
        foreach (var group in s.Counter.Served.GroupBy(port => port.Endpoint.Model.Id))
        {
            var ask = group.Max(s.AskOf) ?? 0;
            var others = s.Worst.DemandWatts - group.Sum(port => s.AskOf(port) ?? 0);
            if (ask > 0)
                rows.Add(new($"number of {group.Key}", "", group.Count(), Whole((budget - others) / ask), Whole((kept - others) / ask)));
        }

        if (s.Counter.Served.Count > 0 && s.Setting.ReservesBy == ReservesBy.Measured)
            rows.Add(new("draw of each device at its port, on average", "W", s.Worst.DemandWatts / s.Counter.Served.Count, budget / s.Counter.Served.Count, kept / s.Counter.Served.Count));
        return rows;
    }

    private double SupplyKeeping(double demand) => reserve.Amount is { } amount ? demand + amount : demand / (1 - Math.Min(0.99, reserve.Share ?? 0));

    // A count that is just kept must not be lost to the last binary digit of a quotient.
    private static double Whole(double count) => Math.Max(0, Math.Floor(count + 1e-9));

    private static WorkingStep Row((string Ask, string Model, double? Watts) key, List<PoweredPort> ports)
    {
        var where = $"ports {Words.Runs(ports.Select(port => port.Port.Port))}";
        return key.Watts is { } watts
            ? new($"{ports.Count} x {Words.Of(watts)} W", $"{key.Model}, {key.Ask}, {where}", ports.Count * watts, "W")
            : new($"{ports.Count} x not known", $"{key.Model}, {where}", null, "W");
    }

    private string Formula() => (s.Worst.State == PowerState.Start, s.Setting.AtStart, s.Setting.ReservesBy) switch
    {
        (true, AtStart.Class, _) => "sum over the ports of the watts of the granted class, set aside before anything is negotiated or measured",
        (true, AtStart.PortLimit, _) => "sum over the ports of the port limit, else the most of the port's type",
        (true, _, _) => "sum over the ports of the draw while starting, losses of the runs included",
        (_, _, ReservesBy.Class) => "sum over the ports of the watts of the granted class",
        (_, _, ReservesBy.PortLimit) => "sum over the ports of the port limit, else the most of the port's type",
        (_, _, ReservesBy.Negotiated) => "sum over the ports of what was negotiated (LLDP), else the class",
        (_, _, ReservesBy.Measured) => "sum over the ports of the draw in this state, losses of the runs included",
        _ => "sum over the ports of the measured maximum and its margin (Autoclass), else the class",
    };

    private string Source()
    {
        var place = s.Switch.Placed.At.ToString();
        return $"IEEE Std 802.3, Tables 33-1 and 145-11 (class powers), Equations 33-2 and 145-2 (negotiated), 145.2.8.2 (Autoclass); setting of {s.Switch.Id}: {(place.Length == 0 ? s.Switch.Model.Id : place)}";
    }
}

namespace Headroom.Engineering.Standby;

/// <summary>The restart told in order: who starts, who gets power in which wave, who is refused, what works again.</summary>
public static class RestartTimeline
{
    /// <summary>The events of a result, by time.</summary>
    /// <param name="result">The result.</param>
    /// <returns>The events; of the same moment in the order of the units.</returns>
    public static IReadOnlyList<RestartEvent> Of(StandbyResult result)
    {
        var events = new List<RestartEvent>();
        foreach (var supply in result.Supplies)
            events.Add(new(0, true, supply.Placed.Id, supply.Model.Recharge is { } recharge ? $"recharges with {Words.Of(recharge.Value.Value)} W beside its load" : "recharges"));
        foreach (var unit in result.Restart.Units)
            AddUnit(events, unit);
        if (result.Restart.LineSeconds is { } line)
            events.Add(new(line, true, "line", "is there again"));
        foreach (var service in result.Kept)
        {
            if (service.BackSeconds is { } back)
                events.Add(new(back, true, service.Name, $"works again{(service.Dark.Count > 0 ? $", {service.Ids.Count - service.Dark.Count} of {service.Ids.Count}" : "")}"));
        }

        return [.. events.OrderBy(one => one.Seconds)];
    }

    private static void AddUnit(List<RestartEvent> events, UnitRestart unit)
    {
        if (unit.Switch is { } s)
        {
            events.Add(new(0, true, unit.Id, "starts"));
            var hands = s.Counter.Served.Count == 0 ? "" : s.BudgetWatts is { } budget ? $", has {Words.Of(budget)} W for its ports" : ", nobody knows what for its ports";
            events.Add(new(unit.BootSeconds ?? 0, unit.BootSeconds is not null, unit.Id, $"is up{hands}"));
        }

        for (var wave = 1; wave <= unit.Waves; wave++)
            AddWave(events, unit, wave);
        if (unit.Dark is { Count: > 0 } dark)
        {
            var last = unit.Ports.Max(port => port.OnSeconds);
            events.Add(new(Math.Max(last, unit.BootSeconds ?? 0), unit.BootSeconds is not null && unit.Ports.All(port => port.Dark || port.OnKnown), unit.Id,
                $"refuses {Names(dark)}: {(dark.Count == 1 ? "it stays" : "they stay")} dark"));
        }
    }

    private static void AddWave(List<RestartEvent> events, UnitRestart unit, int wave)
    {
        var ports = unit.Ports.Where(port => port.Wave == wave).ToList();
        var (first, last) = (ports[0], ports.MaxBy(port => port.UpSeconds)!);
        var reserved = unit.Switch is { } s ? ports.Sum(port => s.StartReserve(port.Port) ?? 0) : (double?)null;
        var set = reserved is { } watts ? $", {Words.Of(watts)} W set aside" : "";
        events.Add(new(first.OnSeconds, first.OnKnown, unit.Id, $"{(unit.Waves > 1 ? $"wave {wave}: " : "")}power for {Names(ports)}{set}"));
        events.Add(new(last.UpSeconds, ports.TrueForAll(port => port.UpKnown), unit.Id, $"{(unit.Waves > 1 ? $"wave {wave}" : "all of these")} up, {last.Port.Id} last"));
    }

    private static string Names(IReadOnlyList<RestartPort> ports) => Words.List([.. ports.Select(port => port.Port.Id)]);
}

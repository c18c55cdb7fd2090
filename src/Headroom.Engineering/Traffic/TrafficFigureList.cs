using Headroom.Domain.Ledgers;

namespace Headroom.Engineering.Traffic;

/// <summary>Figures of traffic that have no limit: calls at once, oversubscription.</summary>
internal static class TrafficFigureList
{
    /// <summary>The figures of a result.</summary>
    public static IEnumerable<Figure> Of(TrafficResult result)
    {
        foreach (var at in result.Switches)
        {
            if (at.Node.Lines.Count > 0 && TrafficReckoner.Offered(at.Behind).Phones > 0)
                yield return Calls(result, at);
            if (at.Node.UpBitsPerSecond is { } up && up > 0)
                yield return Over(at, up);
        }
    }

    private static Figure Calls(TrafficResult result, SwitchTraffic at)
    {
        var (phones, erlangs) = TrafficReckoner.Offered(at.Behind);
        var line = at.Node.Lines[0].Far.Unit;
        return new($"{TrafficLedger.Discipline}/{line}/calls", line, "calls at once in the busy hour", at.Line.Calls, "", null, () => new Working(
            "the fewest lines on which no more calls are lost than may be",
            [
                new("telephones", phones, "", "survey"),
                new("offered together", erlangs, "E", "their shares of the busy hour"),
                new("calls that may be lost", 100 * result.Reckoner.CallsLost, "%", result.Bound.Job.Policy.CallsLost is { } lost ? Binding.Origins.Of(lost) : "not written: common practice, no source"),
            ],
            [
                new("calls at once", "Engset", at.Line.Calls, ""),
                new("lost with one line fewer", "Engset", at.Line.Calls > 0 ? 100 * Trunks.CallCongestion(phones, Math.Min(0.99, erlangs / phones), at.Line.Calls - 1) : null, "%"),
            ],
            "Engset; Iversen, Teletraffic Engineering Handbook, from memory"));
    }

    private static Figure Over(SwitchTraffic at, double up)
    {
        var ends = at.Node.Up.Select(link => link.Near.Port).ToHashSet();
        var access = at.Node.Switch.Model.Ports.SelectMany(group => Enumerable.Range(group.First, group.Last - group.First + 1).Where(port => !ends.Contains(port) && group.Media == "copper")
            .Select(_ => Binding.LinkRate.Fastest(group.Speeds) ?? 0)).ToList();
        return new($"{TrafficLedger.Discipline}/{at.Node.Id}/oversubscription", at.Node.Id, "its copper ports over its uplink", SwitchCapacity.Oversubscription(access, [up]), "", null, () => new Working(
            "Σ rates of copper ports / rate of the uplink",
            [new("copper ports beside the uplink", access.Count, "", at.Node.Switch.Model.Id), new("the uplink", up / 1e6, "Mb/s", "the links as written")],
            [new("how often its ports would fill the uplink", "the quotient", SwitchCapacity.Oversubscription(access, [up]), "")],
            "common definition, no source; 20 towards users and 4 between switches are common practice, no source"));
    }
}

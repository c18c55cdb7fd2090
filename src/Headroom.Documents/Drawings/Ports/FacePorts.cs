using Headroom.Documents.Papers;
using Headroom.Domain.Jobs;
using Headroom.Domain.Ledgers;
using Headroom.Engineering.Binding;
using Headroom.Engineering.Power;

namespace Headroom.Documents.Drawings.Ports;

/// <summary>What is on the ports of a switch.</summary>
internal static class FacePorts
{
    /// <summary>Every port of a switch, by number.</summary>
    public static IReadOnlyList<FacePort> Of(PaperInput input, BoundSwitch unit)
    {
        var verdicts = Verdicts(input.Ledger);
        var on = input.Results.Bound.Endpoints.Where(one => one.Port?.Switch?.Id == unit.Id).GroupBy(one => one.Port!.Port).ToDictionary(group => group.Key, group => group.First());
        var loose = input.Results.Bound.LooseDrops.Where(one => one.Switch?.Id == unit.Id).ToDictionary(one => one.Port, one => one.What);
        var powered = input.Results.Power.Ports.Where(one => one.Port.Switch?.Id == unit.Id).GroupBy(one => one.Id).ToDictionary(group => group.Key, group => group.First());
        var ports = unit.Model.Ports.SelectMany(group => Enumerable.Range(group.First, group.Last - group.First + 1)).Distinct().Order();
        return [.. ports.Select(number =>
        {
            var endpoint = on.GetValueOrDefault(number);
            var link = endpoint is null ? Link(input.Results.Bound.Design, unit.Id, number) : null;
            var power = endpoint is null ? null : powered.GetValueOrDefault(endpoint.Id);
            var fed = Injected(input.Results.Bound, unit.Id, number);
            string?[] subjects = [endpoint?.Id, endpoint?.Endpoint.Drop, $"{unit.Id}/{number}"];
            return new FacePort(
                number,
                endpoint?.Id ?? link ?? fed ?? loose.GetValueOrDefault(number) ?? "",
                power?.In(PowerState.Typical).PortWatts,
                power is not null,
                subjects.OfType<string>().Select(subject => verdicts.TryGetValue(subject, out var verdict) ? verdict : (Verdict?)null).Where(verdict => verdict is not null).OrderBy(Rank).FirstOrDefault())
            {
                Pluggable = unit.PortGroupOf(number)!.Media != "copper",
                IsLink = link is not null || (endpoint is null && fed is not null),
            };
        })];
    }

    private static Dictionary<string, Verdict> Verdicts(Ledger ledger)
    {
        var worst = new Dictionary<string, Verdict>();
        foreach (var entry in ledger.Entries)
        {
            if (!entry.Inside && (!worst.TryGetValue(entry.Subject, out var before) || Rank(entry.Verdict) < Rank(before)))
                worst[entry.Subject] = entry.Verdict;
        }

        return worst;
    }

    private static int Rank(Verdict? verdict) => verdict switch { Verdict.Short => 0, Verdict.Tight => 1, Verdict.Unknown => 2, _ => 3 };

    private static string? Link(Design design, string id, int port)
    {
        foreach (var uplink in design.Uplinks ?? [])
        {
            if (Is(uplink.From, id, port))
                return uplink.To.ToString();
            if (Is(uplink.To, id, port))
                return uplink.From.ToString();
        }

        return null;
    }

    private static string? Injected(BoundDesign bound, string id, int port) =>
        bound.Design.Injectors.FirstOrDefault(injector => injector.From.Any(from => Is(from, id, port)))?.Id;

    private static bool Is(PortRef at, string id, int port) => at.Unit == id && at.Port == port;
}

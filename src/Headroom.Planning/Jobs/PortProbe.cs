using Headroom.Domain.Catalogues;
using Headroom.Domain.Findings;
using Headroom.Domain.Jobs;
using Headroom.Domain.Ledgers;
using Headroom.Domain.Quantities;
using Headroom.Engineering;
using Headroom.Engineering.Power;

namespace Headroom.Planning.Jobs;

/// <summary>Asks the study itself what each kind takes on each group of ports under a setting: the planner has no sums of its own about power.</summary>
internal sealed class PortProbe(Job job, Catalogue catalogue, IReadOnlyList<EndpointKind> kinds, PlanRequest request)
{
    /// <summary>The states that must be kept, in the order of the loads.</summary>
    public static readonly PowerState[] States = [PowerState.Typical, PowerState.Peak, PowerState.Night, PowerState.Frost, PowerState.Start];

    // The class powers at the port: limits people set, since equipment offers them by class.
    private static readonly double[] LimitSteps = [4, 7, 15.4, 30, 45, 60, 75];

    private readonly bool _noneLeft = job.Policy.ReserveOf("power").Of(1) <= 0;

    // Only what a kind is planned by hangs on anything here.
    private readonly IReadOnlyList<Drop> _drops = EndpointKinds.Drops(job, kinds);

    private readonly Dictionary<string, Dictionary<(int Kind, int Group), PortAnswer>> _known = [];

    /// <summary>What each kind takes on each group of a switch.</summary>
    public Dictionary<(int Kind, int Group), PortAnswer> Of(SwitchModel model, SupplyModel? supply, SettingChoice setting)
    {
        // Switches that put the same on the cable in the same way are asked once.
        var key = KeyOf(model, supply, setting);
        return _known.TryGetValue(key, out var known) ? known : _known[key] = Ask(model, supply, setting);
    }

    private static string KeyOf(SwitchModel model, SupplyModel? supply, SettingChoice setting)
    {
        var ports = string.Join(';', model.Ports.Select(group => $"{group.Media},{group.Poe},{group.Passive},{(group.Poe is null ? 0 : group.First)}"));
        return $"{ports}|{supply?.PortVolts?.Value.Value}|{supply?.PortVolts?.PlusMinus}|{WholeSetting.Of(setting.Setting.Over(model.Setting))}|{setting.Limits}";
    }

    private Dictionary<(int Kind, int Group), PortAnswer> Ask(SwitchModel model, SupplyModel? supply, SettingChoice setting)
    {
        var answers = new Dictionary<(int, int), PortAnswer>();
        var asked = new List<(int Kind, int Group)>();
        for (var kind = 0; kind < kinds.Count; kind++)
        {
            for (var group = 0; group < model.Ports.Count; group++)
            {
                var port = model.Ports[group];
                if (port.Media != "copper")
                    continue;
                if (!kinds[kind].TakesPower && port.Passive is not { AlwaysOn: true })
                    answers[(kind, group)] = PortAnswer.Plain(States.Length);
                else if (kinds[kind].TakesPower && (port.Poe is not null || port.Passive is not null))
                    asked.Add((kind, group));
            }
        }

        if (asked.Count == 0)
            return answers;
        var limits = setting.Limits ? LimitsOf(Study(model, supply, setting, asked, []).Power, asked) : [];
        var (power, ledger) = Study(model, supply, setting, asked, limits);
        var broken = ledger.Entries.Where(entry => entry.Verdict is Verdict.Short or Verdict.Tight).GroupBy(entry => entry.Subject).ToDictionary(group => group.Key, group => group.MaxBy(entry => entry.Verdict)!.Id);
        var unknown = ledger.Entries.Where(entry => entry.Verdict == Verdict.Unknown).Select(entry => entry.Subject).ToHashSet();
        foreach (var s in power.Switches)
        {
            // On a weaker port than it asks for, and nobody knows whether it then gets enough: that is not kept.
            if (s.Ports.Count > 0 && s.Ports[0].Demoted && unknown.Contains("e" + s.Switch.Id[1..]))
                broken.TryAdd("e" + s.Switch.Id[1..], "port/watts");
            var at = asked[int.Parse(s.Switch.Id[1..], System.Globalization.CultureInfo.InvariantCulture)];
            answers[at] = Answer(s, broken.GetValueOrDefault("e" + s.Switch.Id[1..]), limits.TryGetValue(at, out var limit) ? limit : null);
        }

        return answers;
    }

    private PortAnswer Answer(SwitchPower s, string? broken, double? limit)
    {
        if (broken is not null || s.Ports.Count == 0 || s.Ports[0].Fault != PortFault.None)
            return new(null, limit, broken is null ? null : Quantity(broken));
        var port = s.Ports[0];
        return new([.. States.Select(state => Load(s, port, state))], limit, null);
    }

    private static string Quantity(string entry) => entry[(entry.LastIndexOf('/') + 1)..];

    // What nobody knows is counted as the most the port gives; the study says that it is not known.
    private long Load(SwitchPower s, PoweredPort port, PowerState state)
    {
        var watts = state != PowerState.Start ? PortReserve.Running(port, s.Setting, state)
            // Where no watt need be left, a switch that tries again brings up in waves what has room once the others have settled. How much
            // that takes is no sum of its ports: the least it can be is counted, and the study sorts out what does not come up.
            : s.Setting.Retries && _noneLeft ? PortReserve.Running(port, s.Setting, PowerState.Typical)
            : PortReserve.Starting(port, s.Setting);
        return (long)Math.Round((watts ?? port.GrantWatts ?? PoeTypes.Of(port.Feed.Type ?? PoeType.Type1).MostSourceWatts) * PortAnswer.PerWatt);
    }

    // Each port gets the least class power that still covers what hangs on it in its worst state.
    private static Dictionary<(int Kind, int Group), double> LimitsOf(PowerResult power, List<(int Kind, int Group)> asked)
    {
        var limits = new Dictionary<(int, int), double>();
        foreach (var s in power.Switches.Where(s => s.Ports.Count > 0 && s.Ports[0].ClassWatts is not null))
        {
            var most = States.Max(state => s.Ports[0].In(state).PortWatts ?? double.PositiveInfinity);
            var step = LimitSteps.FirstOrDefault(watts => watts >= most, double.PositiveInfinity);
            if (step < s.Ports[0].ClassWatts)
                limits[asked[int.Parse(s.Switch.Id[1..], System.Globalization.CultureInfo.InvariantCulture)]] = step;
        }

        return limits;
    }

    private (PowerResult Power, Ledger Ledger) Study(
        SwitchModel model, SupplyModel? supply, SettingChoice setting, List<(int Kind, int Group)> asked, Dictionary<(int Kind, int Group), double> limits)
    {
        var switches = new List<PlacedSwitch>();
        var endpoints = new List<Endpoint>();
        var patch = new List<Patch>();
        for (var i = 0; i < asked.Count; i++)
        {
            var (kind, group) = asked[i];
            var port = model.Ports[group];
            var own = limits.TryGetValue(asked[i], out var limit)
                ? setting.Setting with { PortLimits = new Dictionary<int, Given<Watts>> { [port.First] = Make.Given(new Watts(limit)) } }
                : setting.Setting;
            IReadOnlyList<int>? passive = kinds[kind].Model.Power!.Class is null && port.Passive is { AlwaysOn: false } ? [port.First] : null;
            switches.Add(new PlacedSwitch($"s{i}", model.Id, supply?.Id, new Standing(null, null, null), null, null, own, passive, Place.None));
            endpoints.Add(kinds[kind].Worst with { Id = $"e{i}" });
            patch.Add(new Patch($"e{i}", new PortRef($"s{i}", port.First), Place.None));
        }

        var design = new Design("probe", null, switches, [], [], [], patch, [], Place.None);
        var asks = job with { Survey = job.Survey with { Endpoints = endpoints, Drops = _drops, Listeners = [] }, Designs = [design], Chosen = null };
        var only = new StudyRequest("probe", request.On, [], [PowerLedger.Discipline]) { FirmReadings = request.FirmReadings };
        var results = Engineering.Study.Results(asks, catalogue, only);
        return (results.Power, Engineering.Study.LedgerOf(results, only));
    }
}

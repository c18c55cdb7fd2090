using Headroom.Domain.Catalogues;
using Headroom.Domain.Jobs;

namespace Headroom.Domain.Rules;

/// <summary>What a switch is set to, its model can do.</summary>
internal static class SwitchRules
{
    // Labels let a fan run on a tenth more volts than its rating (common practice, no source).
    private const double FanLabel = 1.1;

    /// <summary>Checks supply, level, settings by port and priorities of each switch.</summary>
    public static void Check(DesignView view, JobNames names, Slips slips)
    {
        foreach (var unit in view.Whole.Switches)
        {
            Priorities(unit, names, slips);
            if (view.ModelOf(unit) is not { } model)
                continue;
            Supply(unit, model, slips);
            Level(unit, model, slips);
            Fan(unit, model, names, slips);
            Ports(unit, model, slips);
        }
    }

    private static void Fan(PlacedSwitch unit, SwitchModel model, JobNames names, Slips slips)
    {
        if (unit.Fan is not { } id)
            return;
        if (!names.Catalogue.Fans.TryGetValue(id, out var fan))
            slips.Unknown(RuleCodes.UnknownFan, unit.At, new("fan model", id, unit.Id, "of the catalogue"), names.Catalogue.Fans.Keys);
        else if (model.Fan is { } own && names.Catalogue.Fans.TryGetValue(own, out var fitted) && fitted.Rated.Value.Value > fan.Rated.Value.Value * FanLabel)
            slips.Add(RuleCodes.FanVolts, unit.At, new(
                $"fan {id} of {unit.Id} is made for {fan.Rated.Written}",
                $"model {model.Id} gives its fans {fitted.Rated.Written}; a fan stands a tenth more than its label says, and then it burns out",
                $"Take a fan for {fitted.Rated.Written}, and check the volts at the plug with a meter."));
    }

    private static void Priorities(PlacedSwitch unit, JobNames names, Slips slips)
    {
        foreach (var name in KeysOf(unit.Setting.EndpointPriorities))
        {
            if (!names.Drops.ContainsKey(name) && !names.Endpoints.ContainsKey(name))
                slips.Unknown(RuleCodes.UnknownPriority, unit.At, new("endpoint or drop", name, $"the priority at {unit.Id}"), names.Patchable);
        }
    }

    // Most switches have none, and asking for the keys of nothing still costs a compilation at each start.
    private static IEnumerable<TKey> KeysOf<TKey, T>(IReadOnlyDictionary<TKey, T> settings) => settings.Count == 0 ? [] : settings.Keys;

    private static void Supply(PlacedSwitch unit, SwitchModel model, Slips slips)
    {
        if (unit.Supply is { } supply && model.Supplies.All(s => s.Id != supply))
            slips.Unknown(RuleCodes.UnknownSupply, unit.At, new("supply", supply, unit.Id, $"of model {model.Id}"), model.Supplies.Select(s => s.Id));
    }

    private static void Level(PlacedSwitch unit, SwitchModel model, Slips slips)
    {
        // No levels and not known to be without fans: nobody has listened to it yet, so any level may be right.
        if (unit.Level is not { } level || model.Sound is not { } sound || (sound.Levels.Count == 0 && sound.Fans != 0))
            return;
        if (sound.Levels.Any(l => l.Level == level))
            return;
        var has = sound.Levels.Count == 0 ? "no fan" : "the fan levels " + string.Join(", ", sound.Levels.Select(l => l.Level));
        slips.Add(
            RuleCodes.NoSuchLevel,
            unit.At,
            new($"{unit.Id} runs at fan level {level}", $"model {model.Id} has {has}", "Correct the level, or leave it out."));
    }

    private static void Ports(PlacedSwitch unit, SwitchModel model, Slips slips)
    {
        var setting = unit.Setting;
        foreach (var port in KeysOf(setting.PortLimits))
            Port(("port limit", port), unit, model, slips);
        foreach (var port in KeysOf(setting.Priorities))
            Port(("priority", port), unit, model, slips);
        foreach (var port in unit.PassivePorts ?? [])
        {
            if (Port(("passive voltage", port), unit, model, slips) is { Passive: null })
                slips.Add(RuleCodes.NoPassive, unit.At, Passive(unit, model, port));
        }
    }

    private static PortGroup? Port((string What, int Port) set, PlacedSwitch unit, SwitchModel model, Slips slips)
    {
        var group = DesignView.GroupOf(model, set.Port);
        if (group is null)
        {
            var said = new Said(
                $"a {set.What} is set for port {set.Port} of {unit.Id}",
                $"model {model.Id} has the ports {DesignView.PortsInWords(model.Ports)}",
                "Correct the port number.");
            slips.Add(RuleCodes.NoSuchPort, unit.At, said, $"{unit.Id}/{set.Port}");
        }

        return group;
    }

    private static Said Passive(PlacedSwitch unit, SwitchModel model, int port)
    {
        var can = DesignView.PortsInWords(model.Ports.Where(g => g.Passive is not null));
        return new(
            $"passive voltage is switched on at port {port} of {unit.Id}",
            can.Length == 0 ? $"model {model.Id} has no port with passive voltage" : $"model {model.Id} has it at the ports {can}",
            "Correct the port, or leave passive voltage off.");
    }
}

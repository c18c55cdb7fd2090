using Headroom.Domain.Catalogues;
using Headroom.Domain.Jobs;

namespace Headroom.Domain.Rules;

/// <summary>What a switch is set to, its model can do.</summary>
internal static class SwitchRules
{
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
            Ports(unit, model, slips);
        }
    }

    private static void Priorities(PlacedSwitch unit, JobNames names, Slips slips)
    {
        foreach (var name in unit.Setting.EndpointPriorities.Keys)
        {
            if (!names.Drops.ContainsKey(name) && !names.Endpoints.ContainsKey(name))
                slips.Unknown(RuleCodes.UnknownPriority, unit.At, new("endpoint or drop", name, $"the priority at {unit.Id}"), names.Patchable);
        }
    }

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
        foreach (var port in setting.PortLimits.Keys)
            Port(("port limit", port), unit, model, slips);
        foreach (var port in setting.Priorities.Keys)
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

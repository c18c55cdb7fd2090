using Headroom.Domain.Catalogues;
using Headroom.Domain.Jobs;
using Headroom.Domain.Quantities;

namespace Headroom.Domain.Rules;

/// <summary>Every cord leads to a port that exists, and no two to one port.</summary>
internal static class PortRules
{
    /// <summary>Checks all cords of a whole design.</summary>
    public static void Check(DesignView view, Slips slips)
    {
        var taken = new Dictionary<PortRef, string>();
        var count = new Dictionary<string, int>();
        foreach (var cord in Cord.Of(view))
        {
            if (Port(cord, view, slips) is not { } port)
                continue;
            count[port.Unit] = count.GetValueOrDefault(port.Unit) + 1;
            if (port.Port is not null && !taken.TryAdd(port, cord.From))
                slips.Add(RuleCodes.PortTaken, cord.At, Taken(port, cord, taken[port]), port.ToString());
        }

        foreach (var injector in view.Whole.Injectors)
            DataSide(injector, view, slips);
        foreach (var (unit, cords) in count)
            Full(unit, cords, view, slips);
    }

    // The port a cord leads to, with the number filled in where a unit has but one; null when there is no such unit or it lies outside the job.
    private static PortRef? Port(Cord cord, DesignView view, Slips slips)
    {
        var port = cord.Port;
        if (view.Switches.TryGetValue(port.Unit, out var unit))
        {
            var model = view.ModelOf(unit);
            if (port.Port is not { } number)
                NotSaid(cord, model is null ? "several ports" : $"the ports {DesignView.PortsInWords(model.Ports)}", slips);
            else if (model is not null && DesignView.GroupOf(model, number) is null)
                None(cord, $"model {model.Id} has the ports {DesignView.PortsInWords(model.Ports)}", slips);
            return port;
        }

        if (view.Injectors.TryGetValue(port.Unit, out var injector))
            return Injector(cord, view.ModelOf(injector), slips);
        if (!cord.Outside || (port.Port is not null || IsNearSwitch(port.Unit, view)))
            slips.Unknown(RuleCodes.UnknownUnit, cord.At, new("unit with ports", port.Unit, cord.From, "of the design"), view.PortUnits);
        return null;
    }

    private static PortRef Injector(Cord cord, InjectorModel? model, Slips slips)
    {
        var port = cord.Port;
        if (port.Port is { } number && model is not null && (number < 1 || number > model.Ports))
            None(cord, $"model {model.Id} has {Count(model.Ports)}", slips);
        else if (port.Port is null && model is { Ports: > 1 })
            NotSaid(cord, Count(model.Ports), slips);
        return port.Port is null && model is null or { Ports: 1 } ? port with { Port = 1 } : port;
    }

    // 'line' and other names without a port lie outside the job, unless one is a switch's name but for a slip of the pen.
    private static bool IsNearSwitch(string name, DesignView view) =>
        name != "line" && Spelling.Nearest(name, view.Switches.Keys) is not null;

    private static void NotSaid(Cord cord, string has, Slips slips) => slips.Add(
        RuleCodes.PortNotSaid,
        cord.At,
        new($"{cord.From} leads to '{cord.Port.Unit}' without a port number", $"it has {has}", $"Write the port, such as '{cord.Port.Unit}/1'."),
        cord.Port.Unit + " " + cord.From);

    private static void None(Cord cord, string has, Slips slips) => slips.Add(
        RuleCodes.NoSuchPort,
        cord.At,
        new($"{cord.From} leads to {cord.Port}", has, "Correct the port number, or take a model with more ports."),
        cord.Port.ToString());

    private static Said Taken(PortRef port, Cord cord, string first) => new(
        $"{cord.From} leads to {port}, where {first} is already", "a port takes one cord", "Give one of the two another port.");

    private static void DataSide(PlacedInjector injector, DesignView view, Slips slips)
    {
        if (view.ModelOf(injector) is not { } model || injector.From.Count <= model.Ports)
            return;
        var said = new Said(
            $"{injector.From.Count} switch ports lead to the data side of {injector.Id}",
            $"model {model.Id} has {Count(model.Ports)}",
            "Take ports out of 'from', or take a model with more ports.");
        slips.Add(RuleCodes.UnitFull, injector.At, said, injector.Id);
    }

    private static int? PortsOf(SwitchModel? model)
    {
        if (model is null)
            return null;
        var ports = 0;
        foreach (var group in model.Ports)
            ports += group.Last - group.First + 1;
        return ports;
    }

    private static void Full(string id, int cords, DesignView view, Slips slips)
    {
        var (model, ports, at) = view.Switches.TryGetValue(id, out var unit)
            ? (unit.Model, PortsOf(view.ModelOf(unit)), unit.At)
            : (view.Injectors[id].Model, view.ModelOf(view.Injectors[id])?.Ports, view.Injectors[id].At);
        if (ports is not { } has || cords <= has)
            return;
        var said = new Said(
            $"{cords} cords lead to {id}",
            $"model {model} has {Count(has)}",
            "Take some to another unit, or take a model with more ports.");
        slips.Add(RuleCodes.UnitFull, at, said, id);
    }

    private static string Count(int ports) => ports == 1 ? "1 port" : $"{ports} ports";
}

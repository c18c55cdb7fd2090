using Headroom.Domain.Catalogues;
using Headroom.Domain.Jobs;

namespace Headroom.Domain.Rules;

/// <summary>Modules understand one another, fit their ports, and run on the cable that lies there.</summary>
internal static class ModuleRules
{
    // Two modules of one kind may be printed with 1300 and 1310 nm; 1270 and 1310 are two colours.
    private const double SameNanometres = 20;

    /// <summary>Checks the links of a whole design.</summary>
    public static void Check(DesignView view, JobNames names, Slips slips)
    {
        foreach (var link in view.Uplinks)
        {
            var (near, far) = (Model(link.Module, names), Model(link.FarModule ?? link.Module, names));
            if (near is not null && far is not null && WhyApart(near, far) is { } why)
                slips.Add(RuleCodes.ModulesDiffer, link.At, Apart(link, near, far, why));
            Port(link.From, near, link, (view, slips));
            Port(link.To, far, link, (view, slips));
            Cable(link, near, names, slips);
        }
    }

    /// <summary>Why two modules do not understand one another; null when they do.</summary>
    private static string? WhyApart(ModuleModel near, ModuleModel far)
    {
        if (near.Media != far.Media)
            return $"one is for {near.Media}, the other for {far.Media}";
        if (near.Speed.Value.Value != far.Speed.Value.Value)
            return $"one runs at {near.Speed.Written}, the other at {far.Speed.Written}";
        if (!Hears(near, far) || !Hears(far, near))
            return "what one sends the other does not receive";
        return near.PortType is { } type && far.PortType is { } other && type != other ? $"one is {type}, the other {other}" : null;
    }

    private static bool Hears(ModuleModel ear, ModuleModel mouth) =>
        mouth.Wavelength is not { } sent || (ear.Receives ?? ear.Wavelength) is not { } heard
        || Math.Abs(sent.Value.Value - heard.Value.Value) <= SameNanometres;

    private static void Port(PortRef end, ModuleModel? module, Uplink link, (DesignView View, Slips Slips) to)
    {
        if (module is null || end.Port is not { } port || !to.View.Switches.TryGetValue(end.Unit, out var unit)
            || to.View.ModelOf(unit) is not { } model || DesignView.GroupOf(model, port) is not { } group)
            return;
        var runs = group.Speeds.Count == 0 || group.Speeds.Any(speed => speed.Value.Value == module.Speed.Value.Value);
        if (group.Media == "pluggable" && runs)
            return;
        var said = new Said(
            $"the uplink from {link.From} has the module '{module.Id}' ({module.Speed.Written}) in {end}",
            group.Media == "pluggable" ? $"that port runs at {string.Join(" or ", group.Speeds.Select(speed => speed.Written))}" : $"that port is {group.Media} and takes no module",
            "Take another port, or another module.");
        to.Slips.Add(RuleCodes.ModuleNotForPort, link.At, said);
    }

    private static void Cable(Uplink link, ModuleModel? module, JobNames names, Slips slips)
    {
        if (link.Drop is not { } id || !names.Drops.TryGetValue(id, out var drop) || CableRules.IsFibre(drop, names) is not { } fibre)
            return;
        var wanted = module?.Media ?? link.Media;
        var category = drop.Pieces.Select(piece => piece.Cable is { } cable ? names.Catalogue.Fibres.GetValueOrDefault(cable)?.Category : null).OfType<string>().FirstOrDefault();
        var fits = wanted switch
        {
            "multimode" => category is not null && IsMultimode(category),
            "singlemode" => category is not null && !IsMultimode(category),
            "fibre" => fibre,
            "copper" => !fibre,
            "direct" => false,
            _ => true,
        };
        if (fits)
            return;
        var said = new Said(
            $"the uplink from {link.From} is of {wanted} and runs on drop {id}, which is {(fibre ? $"fibre of category {category}" : "copper")}",
            wanted == "direct" ? "a direct cord takes no drop" : $"the drop is of {wanted} too",
            "Correct the drop, the module or the media.");
        slips.Add(RuleCodes.OtherCable, link.At, said);
    }

    private static bool IsMultimode(string category) => category.StartsWith("OM", StringComparison.Ordinal);

    private static ModuleModel? Model(string? id, JobNames names) => id is null ? null : names.Catalogue.Modules.GetValueOrDefault(id);

    private static Said Apart(Uplink link, ModuleModel near, ModuleModel far, string why) => new(
        near.Id == far.Id && near.Receives is not null
            ? $"the uplink from {link.From} has the module '{near.Id}' at both ends"
            : $"the uplink from {link.From} has the module '{near.Id}', and '{far.Id}' at the far end",
        $"both ends understand one another; here {why}",
        near.Receives is not null ? "Write its fellow as 'far module'." : "Write modules of one kind, or correct 'far module'.");
}

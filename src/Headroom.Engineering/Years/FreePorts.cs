using Headroom.Domain.Jobs;

namespace Headroom.Engineering.Years;

/// <summary>Ports of switches on which nothing is.</summary>
internal static class FreePorts
{
    /// <summary>The free ports for devices with a supply of their own: those that give no power first.</summary>
    public static List<PortRef> Of(LaterSite site)
    {
        var design = site.Design;
        var taken = design.Patch.Select(patch => patch.To with { Port = patch.To.Port ?? 1 })
            .Concat((design.Uplinks ?? []).SelectMany(link => new[] { link.From, link.To }))
            .Concat(design.Injectors.SelectMany(injector => injector.From)).ToHashSet();
        return
        [
            .. design.Switches
                .Where(unit => unit.Model is not null && site.Catalogue.Switches.ContainsKey(unit.Model))
                .SelectMany(unit => site.Catalogue.Switches[unit.Model!].Ports.SelectMany(group => Enumerable.Range(group.First, group.Last - group.First + 1)
                    .Select(number => (Port: new PortRef(unit.Id, number), Gives: group.Poe is not null || group.Passive is not null, IsModule: group.Media == "pluggable"))))
                .Where(port => !port.IsModule && !taken.Contains(port.Port))
                .OrderBy(port => port.Gives).Select(port => port.Port),
        ];
    }
}

using Headroom.Domain.Catalogues;
using Headroom.Domain.Jobs;
using Headroom.Domain.Quantities;

namespace Headroom.Engineering.Binding;

/// <summary>At which rate two ends of a link run.</summary>
public static class LinkRate
{
    /// <summary>The highest rate that both ends know [bit/s].</summary>
    /// <param name="one">The rates of the one.</param>
    /// <param name="other">The rates of the other; of an end without any the other's count.</param>
    /// <returns>The rate [bit/s]; null when they have none in common or none is known.</returns>
    public static double? Common(IReadOnlyList<Given<BitsPerSecond>> one, IReadOnlyList<Given<BitsPerSecond>> other)
    {
        if (one.Count == 0 || other.Count == 0)
            return Fastest(one.Count == 0 ? other : one);
        double? best = null;
        for (var i = 0; i < one.Count; i++)
        {
            var rate = one[i].Value.Value;
            for (var j = 0; j < other.Count; j++)
            {
                if (other[j].Value.Value == rate && !(best >= rate))
                    best = rate;
            }
        }

        return best;
    }

    /// <summary>The highest of some rates [bit/s]; null when there are none.</summary>
    /// <param name="rates">The rates.</param>
    /// <returns>The rate [bit/s].</returns>
    public static double? Fastest(IReadOnlyList<Given<BitsPerSecond>> rates)
    {
        double? best = null;
        for (var i = 0; i < rates.Count; i++)
            best = best >= rates[i].Value.Value ? best : rates[i].Value.Value;
        return best;
    }

    /// <summary>The link of a design with its rate.</summary>
    internal static SwitchLink Of(Uplink link, (PortRef Near, PortRef Far) ends, (Dictionary<string, NetworkNode> Nodes, Catalogue Catalogue) of)
    {
        var module = link.Module is { } id ? of.Catalogue.Modules.GetValueOrDefault(id) : null;
        var farModule = link.FarModule is { } far ? of.Catalogue.Modules.GetValueOrDefault(far) : module;
        var fromHere = ReferenceEquals(ends.Near, link.From);
        var (one, other) = (Port(ends.Near, of.Nodes), Port(ends.Far, of.Nodes));
        var near = Rate(one, fromHere ? module : farModule);
        if (other is null)
            return new(link, ends.Near, ends.Far, near.Rate, near.Assumed);
        if (link.Module is null && one is { Media: "copper" } && other.Media == "copper")
            return new(link, ends.Near, ends.Far, Common(one.Speeds, other.Speeds), false);
        var there = Rate(other, fromHere ? farModule : module);
        double? slower = near.Rate is { } a && there.Rate is { } b ? Math.Min(a, b) : null;
        return new(link, ends.Near, ends.Far, slower, near.Assumed || there.Assumed);
    }

    private static PortGroup? Port(PortRef port, Dictionary<string, NetworkNode> nodes) =>
        port.Port is { } number && nodes.TryGetValue(port.Unit, out var node) ? node.Switch.PortGroupOf(number) : null;

    private static (double? Rate, bool Assumed) Rate(PortGroup? group, ModuleModel? module)
    {
        if (group is null)
            return (null, false);
        if (group.Media != "copper" && module is not null)
            return (module.Speed.Value.Value, false);
        if (group.Media == "copper")
            return (Fastest(group.Speeds), false);
        double? slowest = null;
        foreach (var rate in group.Speeds)
            slowest = slowest <= rate.Value.Value ? slowest : rate.Value.Value;
        return (slowest, true);
    }
}

using Headroom.Domain.Jobs;

namespace Headroom.Engineering.Binding;

/// <summary>The tree of switches that the uplinks of a design make. Switches that no uplink joins are trees of their own.</summary>
public sealed class BoundNetwork
{
    private readonly Dictionary<string, NetworkNode> _byId;

    private BoundNetwork(List<NetworkNode> nodes, Dictionary<string, NetworkNode> byId) => (Nodes, _byId) = (nodes, byId);

    /// <summary>All switches, each after those between it and the line.</summary>
    public IReadOnlyList<NetworkNode> Nodes { get; }

    /// <summary>Makes the tree of a design.</summary>
    /// <param name="bound">The design; its uplinks run in no ring.</param>
    /// <returns>The tree.</returns>
    public static BoundNetwork Of(BoundDesign bound)
    {
        var byId = new Dictionary<string, NetworkNode>(bound.Switches.Count);
        foreach (var unit in bound.Switches)
            byId[unit.Id] = new NetworkNode(unit, byId.Count);
        var (beside, lines) = (new Dictionary<string, List<SwitchLink>>(), new Dictionary<string, List<SwitchLink>>());
        foreach (var link in bound.Design.Uplinks ?? [])
        {
            Add(link, (link.From, link.To), (beside, lines), (byId, bound.Catalogue));
            Add(link, (link.To, link.From), (beside, lines), (byId, bound.Catalogue));
        }

        var ordered = new List<NetworkNode>(byId.Count);
        foreach (var node in byId.Values)
            node.Lines = lines.GetValueOrDefault(node.Id) ?? [];
        foreach (var root in Roots(byId.Values, bound.Design.Uplinks ?? []))
            Grow(root, beside, byId, ordered);
        return new(ordered, byId);
    }

    /// <summary>The switch of an id.</summary>
    /// <param name="id">The id.</param>
    /// <returns>Its node; null when the design has no such switch.</returns>
    public NetworkNode? Find(string id) => _byId.GetValueOrDefault(id);

    /// <summary>The switch that an endpoint's data comes from, through its injector where it has one.</summary>
    /// <param name="endpoint">The endpoint.</param>
    /// <returns>The node; null when it is on no port, unless there is but one switch.</returns>
    public NetworkNode? Of(BoundEndpoint endpoint)
    {
        if (endpoint.Port is not { } port)
            return Nodes.Count == 1 ? Nodes[0] : null;
        if (port.Switch is { } unit)
            return Find(unit.Id);
        return PortBehind(port) is { } from ? Find(from.Unit) : Nodes.Count == 1 ? Nodes[0] : null;
    }

    /// <summary>The switch port that an injector's port takes its data from; null when it is not written.</summary>
    /// <param name="port">The port of the injector.</param>
    /// <returns>The switch port.</returns>
    public static PortRef? PortBehind(BoundPatch port) =>
        port.Injector is { } injector && port.Port >= 1 && port.Port <= injector.Placed.From.Count ? injector.Placed.From[port.Port - 1] : null;

    private static void Add(
        Uplink link, (PortRef Near, PortRef Far) ends, (Dictionary<string, List<SwitchLink>> Beside, Dictionary<string, List<SwitchLink>> Lines) to,
        (Dictionary<string, NetworkNode> Nodes, Domain.Catalogues.Catalogue Catalogue) of)
    {
        if (!of.Nodes.ContainsKey(ends.Near.Unit))
            return;
        var list = of.Nodes.ContainsKey(ends.Far.Unit) ? to.Beside : to.Lines;
        if (!list.TryGetValue(ends.Near.Unit, out var links))
            list[ends.Near.Unit] = links = [];
        links.Add(LinkRate.Of(link, ends, of));
    }

    // Where a line is, there is the root; else the switch that uplinks lead to and that has none of its own; else any.
    private static IEnumerable<NetworkNode> Roots(IReadOnlyCollection<NetworkNode> nodes, IReadOnlyList<Uplink> uplinks)
    {
        var from = new HashSet<string>();
        foreach (var link in uplinks)
            from.Add(link.From.Unit);
        return nodes.Where(node => node.Lines.Count > 0).Concat(nodes.Where(node => !from.Contains(node.Id))).Concat(nodes);
    }

    private static void Grow(NetworkNode root, Dictionary<string, List<SwitchLink>> beside, Dictionary<string, NetworkNode> byId, List<NetworkNode> ordered)
    {
        if (root.Root is not null)
            return;
        root.Root = root;
        var next = ordered.Count;
        ordered.Add(root);
        for (; next < ordered.Count; next++)
        {
            var here = ordered[next];
            here.Index = next;
            if (!beside.TryGetValue(here.Id, out var links))
                continue;
            foreach (var link in links)
            {
                var there = byId[link.Far.Unit];
                if (there.Root is not null)
                    continue;
                (there.Root, there.Parent, there.Depth) = (root, here, here.Depth + 1);
                there.Up = beside[there.Id].FindAll(back => back.Far.Unit == here.Id);
                ordered.Add(there);
            }
        }
    }
}

using Headroom.Engineering.Binding;

namespace Headroom.Engineering.Failure;

/// <summary>Takes one thing after the other away and looks who is left without power or without a way to the line.</summary>
internal sealed class FailureFinder
{
    private readonly BoundDesign _bound;
    private readonly BoundNetwork _network;
    private readonly NetworkNode?[] _nodes;
    private readonly bool _hasLine;

    /// <summary>Looks up the switch of every endpoint once.</summary>
    public FailureFinder(BoundDesign bound)
    {
        (_bound, _network) = (bound, bound.Network);
        _nodes = new NetworkNode?[bound.Endpoints.Count];
        for (var i = 0; i < _nodes.Length; i++)
            _nodes[i] = _network.Of(bound.Endpoints[i]);
        _hasLine = _network.Nodes.Any(node => node.Lines.Count > 0);
    }

    /// <summary>The effect of each single failure: units, supplies, links, lines; cables of single endpoints are left out, each takes its own endpoint.</summary>
    public IEnumerable<FailureEffect> All()
    {
        foreach (var unit in _bound.Switches)
            yield return Of((unit.Id, unit.Supply is { Pieces: > 1 } ? "switch" : "switch or its supply"), id => id == unit.Id, null, null);
        foreach (var unit in _bound.Injectors)
            yield return Of((unit.Id, "injector"), id => id == unit.Id, null, null);
        foreach (var unit in _bound.Design.Standby)
            yield return Of((unit.Id, "standby supply"), FedBy(unit.Id).Contains, null, null);
        foreach (var node in _network.Nodes)
        {
            if (node.Up.Count == 1)
                yield return Of((node.Up[0].Uplink.Drop ?? $"{node.Id} to {node.Parent!.Id}", "link between switches"), _ => false, node, null);
        }

        foreach (var line in _network.Nodes.SelectMany(node => node.Lines).Select(link => link.Far.Unit).Distinct())
            yield return Of((line, "line"), _ => false, null, line);
    }

    private HashSet<string> FedBy(string standby) =>
    [
        .. _bound.Switches.Where(unit => unit.Placed.FedBy == standby).Select(unit => unit.Id),
        .. _bound.Injectors.Where(unit => unit.Placed.FedBy == standby).Select(unit => unit.Id),
    ];

    private FailureEffect Of((string Subject, string What) of, Func<string, bool> fails, NetworkNode? cut, string? line)
    {
        var reaches = Reaching(fails, cut, line);
        var (dark, off) = (new List<string>(), new List<string>());
        for (var i = 0; i < _nodes.Length; i++)
        {
            var endpoint = _bound.Endpoints[i];
            if (endpoint.TakesPower && endpoint.Port is { } port && fails(port.Unit))
                dark.Add(endpoint.Id);
            else if (_nodes[i] is { } node && !reaches[node.Index] || endpoint.Port is { } on && fails(on.Unit))
                off.Add(endpoint.Id);
        }

        return new(of.Subject, of.What, dark, off);
    }

    // Nodes come after those between them and the root: one walk tells which piece each is in.
    private bool[] Reaching(Func<string, bool> fails, NetworkNode? cut, string? line)
    {
        var pieces = new int[_network.Nodes.Count];
        var live = new bool[pieces.Length];
        foreach (var node in _network.Nodes)
        {
            var joined = node.Parent is { } parent && node != cut && pieces[parent.Index] >= 0;
            pieces[node.Index] = fails(node.Id) ? -1 : joined ? pieces[node.Parent!.Index] : node.Index;
            if (pieces[node.Index] >= 0 && (node.Lines.Any(link => link.Far.Unit != line) || (!_hasLine && node.Parent is null)))
                live[pieces[node.Index]] = true;
        }

        return Array.ConvertAll(pieces, piece => piece >= 0 && live[piece]);
    }
}

using Headroom.Domain.Catalogues;
using Headroom.Engineering.Binding;

namespace Headroom.Engineering.Failure;

/// <summary>The parts that an endpoint hangs on, between the mains and the line. Its own faults and outages of the mains are not among them.</summary>
internal sealed class WayParts
{
    /// <summary>Time until somebody is on site with the part where nobody wrote it [h]: common practice, no source.</summary>
    public const double UsualRepairHours = 24;

    /// <summary>Share of failures that strike both of two alike where nobody wrote it [1]: IEC 61508-6, annex D gives 1 to 10 %, from memory.</summary>
    public const double UsualCommon = 0.05;

    private readonly BoundDesign _bound;
    private readonly WayShare[] _toLine;

    /// <summary>Works out the way of every switch, those nearer to the line first.</summary>
    public WayParts(BoundDesign bound)
    {
        _bound = bound;
        RepairHours = (bound.Job.Policy.Failures?.Repair?.Value.Value ?? UsualRepairHours * 3600) / 3600;
        Common = bound.Job.Policy.Failures?.Common?.Value.Value ?? UsualCommon;
        _toLine = new WayShare[bound.Network.Nodes.Count];
        foreach (var node in bound.Network.Nodes)
        {
            var way = node.Parent is { } parent ? _toLine[parent.Index] : WayShare.Whole;
            foreach (var part in OfNode(node))
                way = way.With(part.Share, part.Name);
            _toLine[node.Index] = way;
        }
    }

    /// <summary>Time until something works again [h].</summary>
    public double RepairHours { get; }

    /// <summary>Share of failures that strike both of two alike [1].</summary>
    public double Common { get; }

    /// <summary>The way of an endpoint; null when it is on no switch.</summary>
    public WayShare? Of(BoundEndpoint endpoint)
    {
        if (_bound.Network.Of(endpoint) is not { } node)
            return null;
        var way = _toLine[node.Index];
        foreach (var part in Own(endpoint, node))
            way = way.With(part.Share, part.Name);
        return way;
    }

    /// <summary>All parts of the way of an endpoint, for telling.</summary>
    public IEnumerable<WayPart> Tell(BoundEndpoint endpoint)
    {
        var first = _bound.Network.Of(endpoint);
        if (first is not null)
        {
            foreach (var part in Own(endpoint, first))
                yield return part;
        }

        for (var node = first; node is not null; node = node.Parent)
        {
            foreach (var part in OfNode(node))
                yield return part;
        }
    }

    // A standby supply that feeds both a switch and the one next to the line counts once, at the one next to the line.
    private IEnumerable<WayPart> OfNode(NetworkNode node)
    {
        yield return Part(node.Id, node.Switch.Model.Body);
        if (node.Switch.Placed.FedBy is { } standby && !IsFedAbove(node.Parent, standby))
            yield return Standby(standby);
        if (node.Up.Count > 0 && Modules(node.Up) is { } modules)
            yield return modules;
        if (node.Parent is null && node.Lines.Count > 0)
            yield return Lines(node);
    }

    private IEnumerable<WayPart> Own(BoundEndpoint endpoint, NetworkNode node)
    {
        if (endpoint.Port?.Injector is not { } injector)
            yield break;
        yield return Part(injector.Id, injector.Model.Body);
        if (injector.Placed.FedBy is { } standby && !IsFedAbove(node, standby))
            yield return Standby(standby);
    }

    private static bool IsFedAbove(NetworkNode? node, string standby)
    {
        for (; node is not null; node = node.Parent)
        {
            if (node.Switch.Placed.FedBy == standby)
                return true;
        }

        return false;
    }

    private WayPart Standby(string id)
    {
        var model = _bound.Design.Standby.FirstOrDefault(one => one.Id == id)?.Model;
        return Part(id, model is null ? null : _bound.Catalogue.Standby.GetValueOrDefault(model)?.Body);
    }

    private WayPart Part(string name, Body? body)
    {
        double? hours = body?.BetweenFailures?.Value.Value / 3600;
        return new(name, hours, hours is { } between ? Availability.Of(between, RepairHours) : null, Origins.Of(body?.BetweenFailures));
    }

    // Each link has a module at both ends; a bundle is lost when all of its links are, or when a common cause strikes.
    private WayPart? Modules(IReadOnlyList<SwitchLink> links)
    {
        var name = links.Count > 1 ? $"modules of {links.Count} links side by side" : $"modules of {links[0].Near}";
        if (links[0].Uplink.Module is not { } id || _bound.Catalogue.Modules.GetValueOrDefault(id) is not { } module)
            return null;
        var one = Part(name, module.Body);
        if (one.Share is not { } share)
            return one;
        var pair = share * share;
        return one with { Share = links.Count > 1 ? Availability.SideBySide(pair, Common) : pair };
    }

    private WayPart Lines(NetworkNode node)
    {
        var lines = node.Lines.Select(link => _bound.Job.Survey.Lines.FirstOrDefault(line => line.Id == link.Far.Unit)).ToList();
        var worst = lines.MinBy(line => line?.Works?.Value.Value ?? double.NegativeInfinity);
        var name = Words.List([.. node.Lines.Select(link => link.Far.Unit).Distinct()]);
        if (worst?.Works is not { } works)
            return new(name, null, null, "not known");
        return new(name, null, lines.Count > 1 ? Availability.SideBySide(works.Value.Value, Common) : works.Value.Value, Origins.Of(works));
    }
}

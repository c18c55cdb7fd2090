using Headroom.Domain.Catalogues;
using Headroom.Domain.Findings;
using Headroom.Domain.Jobs;
using Headroom.Domain.Quantities;
using Headroom.Planning.Packing;

namespace Headroom.Planning.Jobs;

/// <summary>Makes a design of a packing: names, places, cords, links and settings.</summary>
internal sealed class DesignMaker
{
    private readonly JobPacking _packing;
    private readonly Packed _packed;
    private readonly List<PlacedSwitch> _switches = [];
    private readonly List<PlacedInjector> _injectors = [];
    private readonly List<Patch> _patch = [];
    private int _midspanCount;
    private readonly List<List<(int Group, LinkKind Kind, int Port)>> _links = [];
    private readonly List<Endpoint>[] _waiting;
    private readonly TodayCords _today;
    private readonly HashSet<int> _standby;

    private DesignMaker(JobPacking packing, Packed packed, BoughtSet set)
    {
        (_packing, _packed) = (packing, packed);
        _standby = [.. set.Extras.Select(extra => packing.Problem.Extras[extra].Place)];
        _waiting = [.. packing.Kinds.Select(kind => kind.Members.ToList())];
        _today = new TodayCords(packing.Keeps, packing.Job.Survey);
    }

    /// <summary>Makes it.</summary>
    public static Design Make(JobPacking packing, Packed packed, BoughtSet set, string id)
    {
        var maker = new DesignMaker(packing, packed, set);
        for (var i = 0; i < packed.Boxes.Count; i++)
            maker.AddBox(i);
        var today = packing.Job.Designs.Count > 0 ? packing.Job.Designs[0].Fittings : [];
        return new Design(id, null, maker._switches, maker._injectors, [.. maker.Standby(set)], maker.Uplinks(), maker._patch, [], Place.None) { Fittings = today };
    }

    /// <summary>A switch that stands in a place, in its rack where it fits into one.</summary>
    public static PlacedSwitch Switch(string id, Purchase purchase, string? place, Survey survey) => new(
        id, purchase.Model.Id, purchase.Supply is { } supply && purchase.Model.Supplies.Count > 1 ? supply.Id : null, Standing(purchase.Model.Body, place, survey), null, null, PowerSetting.Silent, null, Place.None);

    /// <summary>Where something stands: in the rack of its place when it is made for one.</summary>
    public static Standing Standing(Body body, string? place, Survey survey) =>
        new(body.Units is null ? place : survey.Racks.FirstOrDefault(rack => rack.In == place)?.Id ?? place, null, null);

    // Of the switch that is being made.
    private string? Here => _packing.Places[_packed.Boxes[_switches.Count].Place];

    private string? Feed => _standby.Contains(_packed.Boxes[_switches.Count].Place) ? StandbyId(StandbyNumber(_packed.Boxes[_switches.Count].Place)) : null;

    private static string StandbyId(int number) => $"standby-{number + 1}";

    private void AddBox(int number)
    {
        var packed = _packed.Boxes[number];
        var box = _packing.Boxes[packed.Box];
        var id = $"switch-{number + 1}";
        var free = box.Purchase.Model.Ports.Select(group => Enumerable.Range(group.First, group.Last - group.First + 1).ToList()).ToArray();
        var today = _today.For(box.Purchase, _packing.Places[packed.Place]);
        var (passive, limits) = (new List<int>(), new Dictionary<int, Given<Watts>>());
        var midspans = Midspans(box.Purchase.Midspans);
        foreach (var (way, count) in packed.Items.OrderBy(item => item.Key))
        {
            var serve = box.Ways[way];
            var (kind, group) = (serve.Kind, serve.Group);
            for (var i = 0; i < count && _waiting[kind].Count > 0; i++)
            {
                var (endpoint, port) = today.Next(_waiting[kind], free[group]);
                _waiting[kind].Remove(endpoint);
                free[group].Remove(port);
                AddCord(id, serve, (endpoint, port), (box, passive, limits, midspans));
            }
        }

        // Links sit on the last ports, where people look for them.
        var links = new List<(int, LinkKind, int)>();
        foreach (var link in packed.Links)
        {
            var ports = new Stack<int>(free[link.Group]);
            var kinds = Enumerable.Repeat(LinkKind.Line, link.Outer).Concat(Enumerable.Repeat(LinkKind.Backbone, link.Backbone)).Concat(Enumerable.Repeat(LinkKind.Inner, link.Inner));
            links.AddRange(kinds.Select(kind => (link.Group, kind, ports.Pop())));
        }

        _links.Add(links);
        var setting = box.Setting.Setting with { PortLimits = limits, EndpointPriorities = Kept(id) };
        _switches.Add(Switch(id, box.Purchase, _packing.Places[packed.Place], _packing.Job.Survey) with
        {
            FedBy = Feed,
            Setting = setting,
            PassivePorts = passive.Count > 0 ? passive : null,
        });
    }

    // What must go on is served first, and last to be switched off.
    private Dictionary<string, Priority> Kept(string id)
    {
        var keep = _packing.Job.Policy.Outage.Keep;
        var here = _patch.Where(patch => patch.To.Unit == id).Select(patch => patch.What).ToHashSet();
        return _packing.Kinds.SelectMany(kind => kind.Members.Where(member => kind.TakesPower && (keep.Contains(kind.Model.Kind) || keep.Contains(member.Id)) && here.Contains(member.Drop ?? member.Id)))
            .ToDictionary(member => member.Id, _ => Priority.High);
    }

    private int StandbyNumber(int place) => _standby.Order().ToList().IndexOf(place);

    // They stand beside their switch from the start, whether all their ports are used or not.
    private List<(string Id, List<PortRef> From)> Midspans(Midspans? midspans)
    {
        var made = new List<(string, List<PortRef>)>();
        for (var i = 0; i < (midspans?.Count ?? 0); i++)
        {
            var (id, from) = ($"midspan-{++_midspanCount}", new List<PortRef>());
            _injectors.Add(new PlacedInjector(id, midspans!.Model.Id, Standing(midspans.Model.Body, Here, _packing.Job.Survey), Feed, from, Place.None));
            made.Add((id, from));
        }

        return made;
    }

    private void AddCord(
        string id, BoxServe way, (Endpoint Endpoint, int Port) cord, (BoxWay Box, List<int> Passive, Dictionary<int, Given<Watts>> Limits, List<(string Id, List<PortRef> From)> Midspans) to)
    {
        var (endpoint, port) = cord;
        var what = endpoint.Drop ?? endpoint.Id;
        var here = new PortRef(id, port);
        if (way.Unit > 0)
        {
            var (midspan, from) = to.Midspans[way.Unit - 1];
            from.Add(here);
            _patch.Add(new Patch(what, new PortRef(midspan, from.Count), Place.None));
            return;
        }

        if (way.Via is { } injector)
        {
            var name = $"injector-{_injectors.Count - _midspanCount + 1}";
            _injectors.Add(new PlacedInjector(name, injector.Id, new Standing(Here, null, null), Feed, [here], Place.None));
            _patch.Add(new Patch(what, new PortRef(name, null), Place.None));
            return;
        }

        _patch.Add(new Patch(what, here, Place.None));
        var kind = _packing.Kinds[way.Kind];
        if (kind.TakesPower && kind.Model.Power!.Class is null && to.Box.Purchase.Model.Ports[way.Group].Passive is { AlwaysOn: false })
            to.Passive.Add(port);
        if (to.Box.Answers[(way.Kind, way.Group)].Limit is { } limit)
            to.Limits[port] = Domain.Quantities.Make.Given(new Watts(limit));
    }

    private IEnumerable<PlacedStandby> Standby(BoughtSet set)
    {
        foreach (var number in set.Extras.OrderBy(extra => _packing.Problem.Extras[extra].Place))
        {
            var extra = _packing.Problem.Extras[number];
            var (model, sheds) = _packing.StandbyOf(number);
            yield return new PlacedStandby(StandbyId(StandbyNumber(extra.Place)), model.Id, Standing(model.Body, _packing.Places[extra.Place], _packing.Job.Survey), null, Place.None)
            {
                Also = extra.Place == _packing.Line.Root && _packing.Also.Count > 0 ? _packing.Also : null,
                Sheds = sheds ? [new ShedStage(Priority.Low, Domain.Quantities.Make.Given(new Seconds(StandbyWays.ShedSeconds)))] : null,
            };
        }
    }

    private List<Uplink> Uplinks()
    {
        var uplinks = new List<Uplink>();
        var heads = Enumerable.Range(0, _packed.Boxes.Count).Where(i => _packed.Boxes[i].IsHead).ToDictionary(i => _packed.Boxes[i].Place);
        foreach (var (place, head) in heads.OrderBy(at => at.Key == _packing.Line.Root ? 0 : 1).ThenBy(at => at.Key))
        {
            if (_packing.Line.Ways[place] is not { } way || !heads.TryGetValue(way.Parent, out var parent))
                uplinks.Add(ToLine(head, Take(head, place == _packing.Line.Root ? LinkKind.Line : LinkKind.Backbone)));
            else
                uplinks.Add(Backbone(head, parent, way));
        }

        for (var i = 0; i < _packed.Boxes.Count; i++)
        {
            if (!_packed.Boxes[i].IsHead)
                uplinks.Add(Between(i, heads[_packed.Boxes[i].Place]));
        }

        return uplinks;
    }

    private (int Group, int Port) Take(int box, LinkKind kind)
    {
        var at = _links[box].FindIndex(link => link.Kind == kind);
        var link = _links[box][at];
        _links[box].RemoveAt(at);
        return (link.Group, link.Port);
    }

    // A place looked at by itself reaches the line by the fibre that leads out of it.
    private Uplink ToLine(int box, (int Group, int Port) from)
    {
        var line = _packing.Line;
        var way = line.Ways[_packed.Boxes[box].Place];
        var (drop, module) = way is null ? (line.Drop, line.LineModule) : (way.Drop, way.Module);
        var near = new PortRef(_switches[box].Id, from.Port);
        var to = new PortRef(line.LineId, null);
        return module is not null
            ? new Uplink(near, to, "fibre", module.Id, drop!.Id, Place.None)
            : new Uplink(near, to, "copper", CopperModule(box, from.Group), null, Place.None);
    }

    private Uplink Backbone(int from, int to, BackboneWay way)
    {
        var (near, far) = (Take(from, LinkKind.Backbone), Take(to, LinkKind.Backbone));
        var (nearPort, farPort) = (new PortRef(_switches[from].Id, near.Port), new PortRef(_switches[to].Id, far.Port));
        return way.Module is { } module
            ? new Uplink(nearPort, farPort, "fibre", module.Id, way.Drop!.Id, Place.None)
            : new Uplink(nearPort, farPort, "copper", CopperModule(from, near.Group), null, Place.None) { FarModule = CopperModule(to, far.Group) };
    }

    private Uplink Between(int from, int to)
    {
        var (near, far) = (Take(from, LinkKind.Inner), Take(to, LinkKind.Inner));
        var (nearPort, farPort) = (new PortRef(_switches[from].Id, near.Port), new PortRef(_switches[to].Id, far.Port));
        return new Uplink(nearPort, farPort, "copper", CopperModule(from, near.Group), null, Place.None) { FarModule = CopperModule(to, far.Group) };
    }

    private string? CopperModule(int box, int group) =>
        _packing.Boxes[_packed.Boxes[box].Box].Purchase.Model.Ports[group].Media == "pluggable" ? _packing.Line.CopperModule?.Id : null;
}

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
    private readonly List<List<(int Group, bool Outer, int Port)>> _links = [];
    private readonly Queue<Endpoint>[] _waiting;
    private readonly HashSet<int> _standby;

    private DesignMaker(JobPacking packing, Packed packed, BoughtSet set)
    {
        (_packing, _packed) = (packing, packed);
        _standby = [.. set.Extras.Select(extra => packing.Problem.Extras[extra].Place)];
        _waiting = [.. packing.Kinds.Select(kind => new Queue<Endpoint>(kind.Members))];
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

    private static Standing Standing(Body body, string? place, Survey survey) =>
        new(body.Units is null ? place : survey.Racks.FirstOrDefault(rack => rack.In == place)?.Id ?? place, null, null);

    private static string StandbyId(int number) => $"standby-{number + 1}";

    private void AddBox(int number)
    {
        var packed = _packed.Boxes[number];
        var box = _packing.Boxes[packed.Box];
        var id = $"switch-{number + 1}";
        var free = box.Purchase.Model.Ports.Select(group => new Queue<int>(Enumerable.Range(group.First, group.Last - group.First + 1))).ToArray();
        var (passive, limits) = (new List<int>(), new Dictionary<int, Given<Watts>>());
        foreach (var (way, count) in packed.Items.OrderBy(item => item.Key))
        {
            var (kind, group, via) = box.Ways[way];
            for (var i = 0; i < count; i++)
                AddCord(id, (kind, group, via), free[group].Dequeue(), (box, passive, limits));
        }

        // Links sit on the last ports, where people look for them.
        var links = new List<(int, bool, int)>();
        foreach (var link in packed.Links)
        {
            var ports = new Stack<int>(free[link.Group]);
            for (var i = 0; i < link.Outer + link.Inner; i++)
                links.Add((link.Group, i < link.Outer, ports.Pop()));
        }

        _links.Add(links);
        var setting = box.Setting.Setting with { PortLimits = limits, EndpointPriorities = Kept(id) };
        _switches.Add(Switch(id, box.Purchase, _packing.Places[packed.Place], _packing.Job.Survey) with
        {
            FedBy = _standby.Contains(packed.Place) ? StandbyId(StandbyNumber(packed.Place)) : null,
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

    private void AddCord(string id, (int Kind, int Group, InjectorModel? Via) way, int port, (BoxWay Box, List<int> Passive, Dictionary<int, Given<Watts>> Limits) to)
    {
        if (!_waiting[way.Kind].TryDequeue(out var endpoint))
            return;
        var what = endpoint.Drop ?? endpoint.Id;
        var here = new PortRef(id, port);
        if (way.Via is { } injector)
        {
            var place = _packing.Places[_packed.Boxes[_switches.Count].Place];
            var feed = _standby.Contains(_packed.Boxes[_switches.Count].Place) ? StandbyId(StandbyNumber(_packed.Boxes[_switches.Count].Place)) : null;
            var name = $"injector-{_injectors.Count + 1}";
            _injectors.Add(new PlacedInjector(name, injector.Id, new Standing(place, null, null), feed, [here], Place.None));
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
                Also = extra.Place == _packing.Line.MainPlace && _packing.Also.Count > 0 ? _packing.Also : null,
                Sheds = sheds ? [new ShedStage(Priority.Low, Domain.Quantities.Make.Given(new Seconds(StandbyWays.ShedSeconds)))] : null,
            };
        }
    }

    private List<Uplink> Uplinks()
    {
        var uplinks = new List<Uplink>();
        var heads = Enumerable.Range(0, _packed.Boxes.Count).Where(i => _packed.Boxes[i].IsHead).OrderBy(i => _packed.Boxes[i].Place == _packing.Line.MainPlace ? 0 : 1).ToList();
        if (heads.Count == 0)
            return uplinks;
        var top = heads[0];
        uplinks.Add(ToLine(top, Take(top, outer: true)));
        foreach (var head in heads.Skip(1))
            uplinks.Add(Between(head, Take(head, outer: true), top, Take(top, outer: true)));
        for (var i = 0; i < _packed.Boxes.Count; i++)
        {
            if (_packed.Boxes[i].IsHead)
                continue;
            var head = heads.First(head => _packed.Boxes[head].Place == _packed.Boxes[i].Place);
            uplinks.Add(Between(i, Take(i, outer: false), head, Take(head, outer: false)));
        }

        return uplinks;
    }

    private (int Group, int Port) Take(int box, bool outer)
    {
        var at = _links[box].FindIndex(link => link.Outer == outer);
        var link = _links[box][at];
        _links[box].RemoveAt(at);
        return (link.Group, link.Port);
    }

    private Uplink ToLine(int box, (int Group, int Port) from)
    {
        var line = _packing.Line;
        var near = new PortRef(_switches[box].Id, from.Port);
        var to = new PortRef(line.LineId, null);
        return line.Drop is { } drop
            ? new Uplink(near, to, "fibre", line.LineModule!.Id, drop.Id, Place.None)
            : new Uplink(near, to, "copper", CopperModule(box, from.Group), null, Place.None);
    }

    private Uplink Between(int from, (int Group, int Port) near, int to, (int Group, int Port) far)
    {
        var (nearPort, farPort) = (new PortRef(_switches[from].Id, near.Port), new PortRef(_switches[to].Id, far.Port));
        var (nearModule, farModule) = (CopperModule(from, near.Group), CopperModule(to, far.Group));
        return new Uplink(nearPort, farPort, "copper", nearModule, null, Place.None) { FarModule = farModule };
    }

    private string? CopperModule(int box, int group) =>
        _packing.Boxes[_packed.Boxes[box].Box].Purchase.Model.Ports[group].Media == "pluggable" ? _packing.Line.CopperModule?.Id : null;
}

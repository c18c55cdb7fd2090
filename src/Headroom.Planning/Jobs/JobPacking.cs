using Headroom.Domain.Catalogues;
using Headroom.Domain.Jobs;
using Headroom.Engineering.Power;
using Headroom.Planning.Packing;

namespace Headroom.Planning.Jobs;

/// <summary>A job as a problem of packing, with the way back from boxes to switches.</summary>
internal sealed class JobPacking
{
    private readonly PlanMemory _memory;
    private readonly PlanPins _pins;
    private readonly PortProbe _probe;
    private readonly Dictionary<int, InjectorModel?> _injectors;
    private readonly Dictionary<string, Dictionary<int, long[]>> _midspans;

    /// <summary>Reads a job; its readings are left out already.</summary>
    public JobPacking(Job job, Catalogue catalogue, PlanRequest request, IReadOnlyList<Purchase> purchases, (PlanMemory Memory, LinkRates Rates) with)
    {
        (Job, Catalogue, Purchases) = (job, catalogue, purchases);
        Prices = new UnitPrices(job, catalogue);
        Keeps = request.Pins.MoveCords ? null : Engineering.Study.DesignOf(job, request.Today);
        Places = PlaceList.Of(job, request.Pins);
        Kinds = EndpointKinds.Of(job, catalogue, Places, !request.Pins.WithoutGrowth);
        Line = new LineWay(job, catalogue, Places, Prices, with.Rates);
        _probe = new PortProbe(job, catalogue, Kinds, request);
        var injectors = new InjectorProbe(job, catalogue, Kinds, Prices);
        _injectors = injectors.Cheapest(request);
        _midspans = purchases.Select(purchase => purchase.Midspans?.Model).OfType<InjectorModel>().Distinct().ToDictionary(model => model.Id, model => injectors.Loads(model, request));
        Boxes = [.. purchases.SelectMany(purchase => SettingChoice.Of(purchase.Model).Select(setting => Way(purchase, setting)))];
        Standby = StandbyWays.Of(job, catalogue, Prices);
        Also = StandbyWays.Also(job, Assumed);
        (_memory, _pins) = (with.Memory, request.Pins);
        Problem = Build(request.Pins);
    }

    // What is asked of the study does not hang on how links run.
    private JobPacking(JobPacking like, LinkRates rates)
    {
        (Job, Catalogue, Purchases, Prices, Places, Kinds) = (like.Job, like.Catalogue, like.Purchases, like.Prices, like.Places, like.Kinds);
        Keeps = like.Keeps;
        (Boxes, Standby, Also, Kept, Assumed) = (like.Boxes, like.Standby, like.Also, like.Kept, like.Assumed);
        (_probe, _injectors, _midspans, _memory, _pins) = (like._probe, like._injectors, like._midspans, like._memory, like._pins);
        Line = new LineWay(Job, Catalogue, Places, Prices, rates);
        Problem = Build(_pins);
    }

    /// <summary>The job.</summary>
    public Job Job { get; }

    /// <summary>The catalogue.</summary>
    public Catalogue Catalogue { get; }

    /// <summary>What things cost.</summary>
    public UnitPrices Prices { get; }

    /// <summary>Where switches may stand; a null where nobody says.</summary>
    public IReadOnlyList<string?> Places { get; }

    /// <summary>The design of today, whose cords stay where they can; null when the job has none, or cords may move.</summary>
    public Design? Keeps { get; }

    /// <summary>What is to be served.</summary>
    public IReadOnlyList<EndpointKind> Kinds { get; }

    /// <summary>What can be bought.</summary>
    public IReadOnlyList<Purchase> Purchases { get; }

    /// <summary>What each box of the problem is.</summary>
    public IReadOnlyList<BoxWay> Boxes { get; }

    /// <summary>How links run.</summary>
    public LineWay Line { get; }

    /// <summary>Standby supplies with what is switched off to spare them, in the order of the extras of a place.</summary>
    public IReadOnlyList<StandbyWay> Standby { get; }

    /// <summary>What else hangs on a standby supply.</summary>
    public IReadOnlyList<AlsoFed> Also { get; }

    /// <summary>The standby supply that an extra is.</summary>
    public StandbyWay StandbyOf(int extra) => Standby[extra % Standby.Count];

    /// <summary>Switches that stay, by place and family.</summary>
    public List<(int Place, string Family)> Kept { get; } = [];

    /// <summary>The problem.</summary>
    public PackProblem Problem { get; }

    /// <summary>What was taken for granted.</summary>
    public List<string> Assumed { get; } = [];

    /// <summary>The same with other least rates of links.</summary>
    public JobPacking With(LinkRates rates) => new(this, rates);

    /// <summary>Kinds that nothing in the catalogue serves, with the entry that is not kept.</summary>
    public IEnumerable<(EndpointKind Kind, string? Entry)> Unserved() =>
        Enumerable.Range(0, Kinds.Count)
            .Where(kind => Kinds[kind].Count > 0 && !Problem.Boxes.Any(box => box.Serves.Any(serve => serve.Kind == kind)))
            .Select(kind => (Kinds[kind], Boxes.SelectMany(box => box.Answers.Where(answer => answer.Key.Kind == kind).Select(answer => answer.Value.Entry)).FirstOrDefault(entry => entry is not null)));

    private BoxWay Way(Purchase purchase, SettingChoice setting)
    {
        var answers = _probe.Of(purchase.Model, purchase.Supply, setting);
        var ways = new List<BoxServe>();
        for (var kind = 0; kind < Kinds.Count; kind++)
        {
            for (var group = 0; group < purchase.Model.Ports.Count; group++)
            {
                if (answers.TryGetValue((kind, group), out var answer) && answer.Loads is not null)
                    ways.Add(new(kind, group, null, 0));
                if (_injectors[kind] is { } injector && purchase.Model.Ports[group] is { Media: "copper", Passive: not { AlwaysOn: true } })
                    ways.Add(new(kind, group, injector, 0));
                if (purchase.Midspans is { } midspans && _midspans[midspans.Model.Id].ContainsKey(kind) && purchase.Model.Ports[group].Media == "copper")
                    ways.AddRange(Enumerable.Range(1, midspans.Count).Select(unit => new BoxServe(kind, group, midspans.Model, unit)));
            }
        }

        return new(purchase, setting, answers, ways);
    }

    private PackProblem Build(PlanPins pins)
    {
        var boxes = Boxes.Select(box => Box(box, pins)).ToList();
        var standby = StandbyWays.Places(Job, Kinds, Line.Root);
        var extras = standby.SelectMany(place => Standby.Select(way => Extra(way, place))).ToList();
        return new PackProblem(Places.Count, [.. Kinds.Select(kind => new PackKind(kind.Id, kind.Count, kind.Places))], boxes)
        {
            Links = Line.Links,
            Extras = extras,
            Bears = [.. Job.Survey.Listeners.Select(listener => listener.Limit is { } limit ? Power(limit.Value.Value) : double.PositiveInfinity)],
        };
    }

    // What its load is at the least is known before it is known what hangs where: nothing that is smaller is even tried.
    private PackExtra Extra(StandbyWay way, int place)
    {
        var also = place == Line.Root ? Also : [];
        var most = _memory.Standby($"{way.Model.Id}|{way.Sheds}|{Places[place]}", () => new StandbyProbe(Job, Catalogue, Places[place]).MostWatts(way));
        var holds = most - also.Sum(fed => fed.Watts.Value.Value) - FeedWatts.OfPorts(Kinds, place, [.. Purchases.Select(purchase => purchase.Supply), .. Catalogue.Injectors.Values.Select(model => model.Supply)]);
        // A coin more where ports are switched off: that is taken only where it is needed.
        var cost = UnitPrices.Coins(Prices.Of(way.Model)!) + (way.Sheds ? 1 : 0);
        return new(way.Model.Id, place, cost, (long)Math.Floor(holds * 1000)) { Plugs = way.Model.Outlets - also.Count };
    }

    private PackBox Box(BoxWay box, PlanPins pins)
    {
        var (model, supply) = (box.Purchase.Model, box.Purchase.Supply);
        var powered = model.Ports.Where(group => group.Poe is not null || group.Passive is not null).Sum(group => group.Last - group.First + 1);
        var serves = box.Ways.Select(way => Serve(box, way)).ToList();
        var midspans = box.Purchase.Midspans;
        var watts = Budget(midspans is null ? supply?.PortWatts?.Value.Value ?? 0 : midspans.Watts ?? 0);
        // Where a supply may fail, what is left then must do while all runs.
        var oneLost = Job.Policy.Failures is { SupplyMayFail: true } && supply is { Pieces: > 1, OneLost: { } left } && midspans is null ? OneLost(left.Value.Value) : watts;
        var ports = midspans is null ? Math.Max(0, (long)Math.Floor(powered - Job.Policy.ReserveOf("ports").Of(powered) + 1e-9)) : midspans.Count * midspans.Model.Ports;
        return new PackBox(
            $"{box.Purchase.Name} {box.Setting}",
            UnitPrices.Coins(box.Purchase.Cost),
            [.. model.Ports.Select(group => group.Last - group.First + 1)],
            serves,
            [.. PortProbe.States.Select(state => state == PowerState.Start ? watts : Math.Min(watts, oneLost)), ports, .. Each(midspans)])
        {
            Plugs = 1 + (midspans?.Count ?? 0),
            Family = box.Purchase.Name,
            Places = box.Purchase.Places,
            Most = box.Purchase.Owned ? pins.Owned[model.Id] : null,
            Links = [.. Links(model)],
            Heard = [.. box.Purchase.Heard.Select(heard => Job.Survey.Listeners.Select(listener => heard.TryGetValue(listener.Id, out var level) ? Power(level) : 0).ToList())],
            Draw = FeedWatts.OfBox(model, supply),
        };
    }

    // Levels add as powers. Source: the definition of the level, ISO 80000-8.
    private static double Power(double level) => Math.Pow(10, level / 10);

    private long OneLost(double watts) => (long)Math.Round((watts - Job.Policy.ReserveOf("supply lost").Of(watts)) * PortAnswer.PerWatt);

    private long Budget(double watts) => (long)Math.Round((watts - Job.Policy.ReserveOf("power").Of(watts)) * PortAnswer.PerWatt);

    // A switch that gives no power leaves the rows of its own to its midspans together; where there are several, each has its rows beside that.
    private IEnumerable<long> Each(Midspans? midspans) => midspans is not { Count: > 1 } ? [] : Enumerable.Range(0, midspans.Count)
        .SelectMany(_ => PortProbe.States.Select(_ => Budget((midspans.Watts ?? 0) / midspans.Count)).Append(midspans.Model.Ports));

    private PackServe Serve(BoxWay box, BoxServe way)
    {
        if (way.Unit > 0)
        {
            var (midspans, own) = (box.Purchase.Midspans!, (long[])[.. _midspans[way.Via!.Id][way.Kind], 1]);
            var each = midspans.Count == 1 ? [] : Enumerable.Range(1, midspans.Count).SelectMany(unit => unit == way.Unit ? own : new long[own.Length]);
            return new(way.Kind, way.Group, [.. own, .. each]);
        }

        if (box.Purchase.Midspans is { } beside && way.Via is null)
            return new(way.Kind, way.Group, new long[RowsOf(beside)]);
        if (way.Via is { } injector)
            return new(way.Kind, way.Group, new long[RowsOf(box.Purchase.Midspans)]) { Via = injector.Id, Cost = UnitPrices.Coins(Prices.Of(injector)!) };
        var powered = Kinds[way.Kind].TakesPower ? 1L : 0;
        return new(way.Kind, way.Group, [.. box.Answers[(way.Kind, way.Group)].Loads!, powered]);
    }

    private static int RowsOf(Midspans? midspans) => (PortProbe.States.Length + 1) * (midspans is { Count: > 1 } ? midspans.Count + 1 : 1);

    private IEnumerable<PackLink> Links(SwitchModel model)
    {
        for (var group = 0; group < model.Ports.Count; group++)
        {
            var port = model.Ports[group];
            var copper = port.Media == "copper" && port.Passive is not { AlwaysOn: true } && Line.IsFast(port, 0, LinkKind.Inner);
            var outer = port.Media == "copper" && port.Passive is not { AlwaysOn: true } && Line.IsFast(port, Line.Root, LinkKind.Line);
            var module = Line.CopperModule is { } one && LineWay.RunsIn(one, port) ? UnitPrices.Coins(Prices.Of(one)!) : (long?)null;
            var fibre = Line.LineModule is { } two && LineWay.RunsIn(two, port) ? UnitPrices.Coins(Prices.Of(two)!) : (long?)null;
            yield return new(group, copper ? 0 : module, Line.LineModule is null ? outer ? 0 : module : fibre, null)
            {
                BackboneAt = [.. Enumerable.Range(0, Places.Count).Select(place => Backbone(port, place, module))],
            };
        }
    }

    // All of a place end on one switch: each of its ports that bears them bears any of them, at their mean.
    private long? Backbone(PortGroup port, int place, long? copperModule)
    {
        var (sum, count) = (0L, 0);
        foreach (var module in Line.BackbonesOf(place))
        {
            var copper = port.Media == "copper" && port.Passive is not { AlwaysOn: true } && Line.IsFast(port, place, LinkKind.Backbone);
            var one = module is null ? copper ? 0 : copperModule : LineWay.RunsIn(module, port) ? UnitPrices.Coins(Prices.Of(module)!) : null;
            if (one is null)
                return null;
            (sum, count) = (sum + one.Value, count + 1);
        }

        return count == 0 ? null : sum / count;
    }
}

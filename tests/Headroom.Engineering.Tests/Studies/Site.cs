using Headroom.Domain.Catalogues;
using Headroom.Domain.Findings;
using Headroom.Domain.Jobs;
using Headroom.Domain.Ledgers;
using Headroom.Domain.Quantities;

namespace Headroom.Engineering.Tests.Studies;

/// <summary>Builds a small job for a test, with models made for it; all figures are invented.</summary>
internal sealed class Site
{
    public static readonly DateOnly Today = new(2026, 11, 25);

    private readonly Dictionary<string, SwitchModel> _switches = [];
    private readonly Dictionary<string, InjectorModel> _injectors = [];
    private readonly Dictionary<string, EndpointModel> _models = [];
    private readonly List<PlacedSwitch> _placed = [];
    private readonly List<PlacedInjector> _placedInjectors = [];
    private readonly List<Drop> _drops = [];
    private readonly List<Endpoint> _endpoints = [];
    private readonly List<Patch> _patch = [];
    private readonly List<Reading> _readings = [];
    private readonly List<Overruling> _overrulings = [];
    private Headroom.Domain.Jobs.Policy _policy = Headroom.Domain.Jobs.Policy.None;

    public static Body Body(string id) => new(id, null, null, null, null, null, null, null, null, null, null, null, Place.None);

    public static Given<Watts> W(double watts) => Make.Given(new Watts(watts), Origin.Invented);

    public static Given<Volts> V(double volts, double? half = null) => Make.Given(new Volts(volts), Origin.Invented) with { PlusMinus = half };

    public static PassiveOutput Passive(double volts, double? amperes = 1, bool always = false) =>
        new(V(volts), amperes is { } a ? Make.Given(new Amperes(a)) : null, 2, always);

    public static SupplyModel Supply(double? portWatts, double? volts = 54, double? rated = null) => new(
        "inside", portWatts is { } w ? W(w) : null, volts is { } v ? V(v) : null, rated is { } r ? W(r) : null,
        [new(Make.Given(new Share(0.5)), Make.Given(new Share(0.9)))], "ac", null, null);

    public Site Policy(params (string Kind, Reserve Reserve)[] reserves)
    {
        _policy = Headroom.Domain.Jobs.Policy.None with { Reserves = reserves.ToDictionary(r => r.Kind, r => r.Reserve) };
        return this;
    }

    public Site Switch(string id, SwitchModel model, PowerSetting? setting = null, IReadOnlyList<int>? passive = null)
    {
        _switches[model.Id] = model;
        _placed.Add(new PlacedSwitch(id, model.Id, null, new Standing(null, null, null), null, null, setting ?? PowerSetting.Silent, passive, Place.None));
        return this;
    }

    public Site Switch(string id, double? budget, PowerSetting? setting = null, PoeType? type = PoeType.Type2, int ports = 24) =>
        Switch(id, Model($"model-of-{id}", budget, type, ports), setting);

    public static SwitchModel Model(string id, double? budget, PoeType? type = PoeType.Type2, int ports = 24, PassiveOutput? passive = null) => new(
        Body(id), [new PortGroup(1, ports, "copper", [], type, passive)], [Supply(budget)], W(20), null, PowerSetting.Silent,
        Enum.GetValues<ReservesBy>(), null, null, null);

    public Site Injector(string id, PoeType? type, PassiveOutput? passive, double? watts)
    {
        _injectors[id] = new InjectorModel(Body(id), 1, type, passive, null, Supply(watts));
        _placedInjectors.Add(new PlacedInjector(id, id, new Standing(null, null, null), null, [], Place.None));
        return this;
    }

    public Site Model(EndpointModel model)
    {
        _models[model.Id] = model;
        return this;
    }

    public static EndpointModel Device(string id, int? cls, double? typical = null, double? peak = null, double? start = null, double? night = null) => new(
        Body(id), "other",
        new PowerIntake(cls, false, null, null, null, null, false, WhenDemoted.Runs, Make.Given(new Farads(100e-6)), W(2)),
        Draws(typical, peak, start, night), [], 0);

    public static EndpointModel Radio(string id, double least, double most, double watts) => new(
        Body(id), "radio",
        new PowerIntake(null, false, V((least + most) / 2, (most - least) / 2), null, null, null, false, null, null, null),
        Draws(watts, watts, watts, null), [], 0);

    public Site Put(string id, string model, string? port, double? metres = 30, double awg = 24)
    {
        var cable = $"cable-{awg}";
        _drops.Add(new Drop($"K-{id}", "closet", null,
            [new RunPiece(metres is { } m ? Make.Given(new Metres(m), Origin.Measured) : null, cable, Make.Given(new Celsius(20)), null, null)], NoCord, NoCord, Place.None));
        _cables[cable] = new CableModel(Body(cable), null, Make.Given(new SquareMillimetres(new GaugeUnit().ToBase(awg))), null, Clad, null, false, null, null);
        _endpoints.Add(new Endpoint(id, model, $"K-{id}", null, null, new Dictionary<string, Given<Watts>>(), null, null, Place.None));
        if (port is null)
            return this;
        var parts = port.Split('/');
        _patch.Add(new Patch($"K-{id}", new PortRef(parts[0], parts.Length > 1 ? int.Parse(parts[1], System.Globalization.CultureInfo.InvariantCulture) : null), Place.None));
        return this;
    }

    public Site PutMany(int count, string model, string on, int firstPort = 1, double metres = 30)
    {
        for (var i = 0; i < count; i++)
            Put($"{model}-{i + 1}", model, $"{on}/{firstPort + i}", metres);
        return this;
    }

    public Site Read(string what, string where, double value, string unit, string? during = null, string? with = "meter", bool bound = false)
    {
        _readings.Add(new Reading(what, where, value, unit, null, $"{value} {unit}", with, null, bound, Today, during, null, null, null, null, null, Place.None));
        return this;
    }

    public Site Overrule(string entry)
    {
        _overrulings.Add(new Overruling(entry, "seen it hold", "J. Marsh", Today, Place.None));
        return this;
    }

    public bool Clad { get; set; }

    public Job Job => new(
        "test", null, _policy, new Survey([], [], [], [], _drops, _endpoints),
        [new Design("only", null, _placed, _placedInjectors, [], null, _patch, [], Place.None)], null, _readings, _overrulings, Place.None);

    public Catalogue Catalogue => Headroom.Domain.Catalogues.Catalogue.Empty with
    {
        Switches = _switches, Injectors = _injectors, Endpoints = _models, Cables = _cables,
    };

    public Ledger Study(params CountAs[] counts) => Engineering.Study.Run(Job, Catalogue, new StudyRequest(null, Today, counts, null));

    public LedgerEntry Entry(string id, params CountAs[] counts) =>
        Study(counts).Entries.SingleOrDefault(entry => entry.Id == id)
        ?? throw new InvalidOperationException($"no entry {id}; there are {string.Join(", ", Study(counts).Entries.Select(entry => entry.Id))}");

    private readonly Dictionary<string, CableModel> _cables = [];

    // A cord of no length: the tests that are about the run want nothing else in it.
    private static readonly RunPiece NoCord = new(Make.Given(new Metres(0)), "cable-24", Make.Given(new Celsius(20)), null, null);

    private static Dictionary<string, Given<Watts>> Draws(double? typical, double? peak, double? start, double? night)
    {
        var draws = new Dictionary<string, Given<Watts>>();
        foreach (var (name, watts) in new[] { ("typical", typical), ("peak", peak), ("start", start), ("night", night) })
        {
            if (watts is { } known)
                draws[name] = W(known);
        }

        return draws;
    }
}

using Headroom.Domain.Catalogues;
using Headroom.Domain.Findings;
using Headroom.Domain.Jobs;
using Headroom.Domain.Quantities;
using Headroom.Domain.Rules;

namespace Headroom.Domain.Tests.Rules;

/// <summary>A job under construction. All names and numbers are invented.</summary>
internal sealed class Site
{
    private int line;

    public List<Space> Spaces { get; } = [];

    public List<Rack> Racks { get; } = [];

    public List<Listener> Listeners { get; } = [];

    public List<Partition> Partitions { get; } = [];

    public List<Screen> Screens { get; } = [];

    public List<Noise> Noises { get; } = [];

    public List<Pathway> Pathways { get; } = [];

    public List<Drop> Drops { get; } = [];

    public List<Endpoint> Endpoints { get; } = [];

    public List<Design> Designs { get; } = [];

    public List<Reading> Readings { get; } = [];

    public List<Line> Lines { get; } = [];

    public List<FleetRow> Fleet { get; } = [];

    public List<Price> Prices { get; } = [];

    public Policy Policy { get; set; } = Policy.None;

    public string? Chosen { get; set; }

    public Catalogue Catalogue { get; set; } = Models.All;

    public MoneyTerms? Money { get; set; }

    public AddressPlan? Addresses { get; set; }

    public Job Job => new(
        "a job", null, Policy, new(Spaces, Listeners, Racks, Pathways, Drops, Endpoints) { Partitions = Partitions, Screens = Screens, Noises = Noises, Lines = Lines, Addresses = Addresses }, Designs, Chosen, Readings, [], new("job.yaml", 0, 0)) { Prices = Prices, Fleet = Fleet, Money = Money };

    public IReadOnlyList<Finding> Findings => JobRules.Check(Job, Catalogue);

    public IEnumerable<string> Codes => Findings.Select(f => f.Code);

    public ExtraLine Line(string what, string currency) => new(what, 1, new(new Money(12, currency), $"12 {currency}", Origin.Unstated, null, Here()), null, null, null, Here());

    public Place Here() => new("job.yaml", ++line, 1);

    /// <summary>Two rooms, a cupboard with a rack, three drops, four endpoints and two designs, with nothing wrong.</summary>
    public static Site Sound()
    {
        var site = new Site { Chosen = "first" };
        site.Space("office", 6, 5);
        site.Space("store", 4, 3);
        site.Space("cupboard", 0.9, 0.6);
        site.Racks.Add(new("A", "cupboard", Made.Of(new RackUnits(12)), Made.Of(new Metres(0.5)), null, null, site.Here()));
        site.Listeners.Add(new("desk", "office", site.At(2, 1, 1.2), Made.Of(new SoundPressure(40)), null, site.Here()));
        site.Partitions.Add(new("wall", ["office", "store"], Made.Of(new SquareMetres(12)), Made.Of(new Decibels(38)), Made.Of(new SquareMetres(2)), Made.Of(new Decibels(25)), Made.Of(new SquareMetres(0.01)), site.Here()));
        site.Screens.Add(new("counter", "office", "screen", site.At(1, 2, 1.1), site.At(3, 2, 1.1), null, site.Here()));
        site.Noises.Add(new("copier", "office", site.At(4, 1, 0.8), 1, new(1, Made.Of(new SoundPower(50)), null, null, null, null), site.Here()));
        site.Pathways.Add(new("loft", "conduit", Made.Of(new Metres(0.035)), null, [], null, null, site.Degrees(28), site.Here()));
        foreach (var id in new[] { "K-01", "K-02", "K-03" })
            site.Drop(id, 31);
        site.Endpoint("phone-1", "K-01");
        site.Endpoint("phone-2", "K-02");
        site.Endpoint("phone-3", "K-03");
        site.Endpoint("radio-1", null, "radio");
        site.Designs.Add(site.First());
        site.Designs.Add(site.Empty("second") with { Like = "first", Switches = [site.Switch("sw-1", null) with { Standing = new("office", site.At(1, 1, 1), null) }] });
        site.Readings.Add(site.Reading("sw-1/2", 6.4));
        return site;
    }

    public Space Space(string id, double length, double width)
    {
        var size = new Given<Headroom.Domain.Quantities.Size>(new(length, width, 2.7), $"{Make.Given(new Metres(length)).Written} x {width} x 2.7 m", Origin.Unstated, null, Here());
        Spaces.Add(new(id, size, null, null, null, null, new Dictionary<string, Given<Celsius>>(), null, null, null, Here()));
        return Spaces[^1];
    }

    public void Drop(string id, double metres) => Drops.Add(new(id, "cupboard", "office", [Piece(metres)], Cord, null, Here()));

    public RunPiece Piece(double metres) => new(new(new(metres), $"{metres} m", Origin.Unstated, null, Here()), "fern", null, null, "loft");

    public static RunPiece Cord => new(Made.Of(new Metres(1)), "fern", null, null, null);

    public void Endpoint(string id, string? drop, string model = "phone") => Endpoints.Add(
        new(id, model, drop, null, null, new Dictionary<string, Given<Watts>>(), null, null, Here()));

    public Given<Spot> At(double x, double y, double z) => new(new(x, y, z), $"{x} x {y} x {z} m", Origin.Unstated, null, Here());

    public Given<Celsius> Degrees(double value) => new(new(value), $"{value} °C", Origin.Unstated, null, Here());

    public Reading Reading(string where, double watts) => new(
        "watts", where, watts, "W", null, $"{watts} W", null, null, false, new DateOnly(2026, 11, 14), null, null, null, null, null, null, Here());

    public Design Empty(string id) => new(id, null, [], [], [], null, [], [], Here());

    public PlacedSwitch Switch(string id, string? model) => new(id, model, null, new(null, null, null), null, null, PowerSetting.Silent, null, Here());

    public PlacedInjector Injector(string id, string? model, params PortRef[] from) => new(id, model, new(null, null, null), null, from, Here());

    public Patch Patch(string what, string unit, int? port) => new(what, new(unit, port), Here());

    public Uplink Link(string from, int port, string to, int? toPort) => new(new(from, port), new(to, toPort), null, null, null, Here());

    private Design First() => Empty("first") with
    {
        Switches =
        [
            Switch("sw-1", "wren") with { Supply = "usual", Standing = new("A", null, 3), FedBy = "ups-1", Level = 2, PassivePorts = [8] },
            Switch("sw-2", "wren") with { Standing = new("A", null, 4) },
        ],
        Injectors = [Injector("inj-1", "dunnock", new PortRef("sw-2", 1)) with { Standing = new("store", At(1, 1, 1), null) }],
        Standby = [new("ups-1", "holm", new("A", null, 1), null, Here())],
        Uplinks = [Link("sw-1", 9, "line", null), Link("sw-2", 9, "sw-1", 10)],
        Patch = [Patch("K-01", "sw-1", 1), Patch("K-02", "sw-1", 2), Patch("K-03", "inj-1", null), Patch("radio-1", "sw-2", 2)],
    };
}

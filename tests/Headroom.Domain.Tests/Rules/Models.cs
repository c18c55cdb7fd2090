using Headroom.Domain.Catalogues;
using Headroom.Domain.Findings;
using Headroom.Domain.Jobs;
using Headroom.Domain.Quantities;

namespace Headroom.Domain.Tests.Rules;

/// <summary>A small catalogue; all of it is invented.</summary>
internal static class Models
{
    public static Catalogue All { get; } = Catalogue.Empty with
    {
        Switches = By(Switch("wren", units: 1), Switch("finch", units: 2)),
        Injectors = new Dictionary<string, InjectorModel> { ["dunnock"] = Injector("dunnock", 1), ["heron"] = Injector("heron", 2) },
        Endpoints = new Dictionary<string, EndpointModel> { ["phone"] = Endpoint("phone"), ["radio"] = Endpoint("radio") },
        Cables = new Dictionary<string, CableModel> { ["fern"] = Cable("fern", false), ["tinsel"] = Cable("tinsel", true) },
        Fibres = new Dictionary<string, FibreModel> { ["glass"] = new(Body("glass"), "OM4", 8, new Dictionary<int, Given<Decibels>>()) },
        Modules = new Dictionary<string, ModuleModel>
        {
            ["bead"] = Module("bead", "multimode", 850), ["pearl"] = Module("pearl", "singlemode", 1310),
            ["red"] = Module("red", "singlemode", 1310, 1490), ["blue"] = Module("blue", "singlemode", 1490, 1310), ["plug"] = Module("plug", "copper", null),
        },
        Standby = new Dictionary<string, StandbyModel> { ["holm"] = new(Body("holm", 2), null, null, null, null, null, []) },
    };

    public static SwitchModel Switch(string id, int? units) => new(
        Body(id, units),
        [
            new(1, 7, "copper", [], PoeType.Type2, null),
            new(8, 8, "copper", [], null, new(Made.Of(new Volts(24)), null, null, false)),
            new(9, 10, "pluggable", [Made.Of(new BitsPerSecond(1e9))], null, null),
        ],
        [new("usual", null, null, null, [], null, null, null)],
        null,
        null,
        PowerSetting.Silent,
        [],
        new(2, [Level(1), Level(2)]),
        null,
        null);

    public static ModuleModel Module(string id, string media, double? sends, double? receives = null, double speed = 1e9) => new(
        Body(id), Made.Of(new BitsPerSecond(speed)), media, Nanometres(sends), Nanometres(receives), new Dictionary<string, Given<Metres>>(), null, null);

    public static FanModel Fan(string id, double volts) => new(Body(id), Made.Of(new Volts(volts)), null, null, null, [], null, null, null, null);

    private static Given<Nanometres>? Nanometres(double? value) => value is { } nm ? Made.Of(new Nanometres(nm)) : null;

    private static FanLevel Level(int level) => new(level, Made.Of(new SoundPower(40)), null, null, null, null);

    private static InjectorModel Injector(string id, int ports) =>
        new(Body(id), ports, PoeType.Type2, null, null, new("usual", null, null, null, [], null, null, null));

    private static EndpointModel Endpoint(string id) => new(Body(id), "phone", null, new Dictionary<string, Given<Watts>>(), [], 0);

    private static CableModel Cable(string id, bool copperClad) =>
        new(Body(id), "6", null, null, copperClad, null, false, null, Made.Of(new Celsius(60)));

    private static Body Body(string id, int? units = null) => new(
        id, null, null, null, null, units is { } u ? Made.Of(new RackUnits(u)) : null, null, null, null, null, null, null, Place.None);

    private static Dictionary<string, SwitchModel> By(params SwitchModel[] models) => models.ToDictionary(m => m.Id);
}

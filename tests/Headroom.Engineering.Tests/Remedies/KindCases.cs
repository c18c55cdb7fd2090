namespace Headroom.Engineering.Tests.Remedies;

/// <summary>For each kind of remedy a site where it must help, and one where it must not be offered; all invented.</summary>
internal static class KindCases
{
    private const string Closet = "spaces: {closet: {kind: cupboard}, hall: {kind: open office}}";

    private static string Power(string model, string more = "", string endpoints = "{ap-1: {model: dish}, ap-2: {model: dish}}", string patch = "{ap-1: sw-1/1, ap-2: sw-1/2}") => $$$$$"""
        survey: {{{{{{Closet}}}}}, endpoints: {{{{{endpoints}}}}}}
        designs: {d: {switches: {sw-1: {model: {{{{{model}}}}}, in: closet}{{{{{more}}}}}}, patch: {{{{{patch}}}}}}}
        """;

    private static string Kept(string patch, string more = "") => $$$$$"""
        policy: {outage: {runtime: 5 min, keep: [phone], back within: 10 min}}
        survey: {{{{{{Closet}}}}}, lines: {line: {boxes: [], boot: 10 s}}, endpoints: {ap-1: {model: dish}, phone-1: {model: handset}}}
        designs: {d: {switches: {sw-1: {model: meek, in: closet}}, patch: {{{{{patch}}}}}{{{{{more}}}}}}}
        """;

    private static string Battery(string more, int minutes = 200) => $$$$$"""
        policy: {outage: {runtime: {{{{{minutes}}}}} min}}
        survey:
          spaces: {closet: {kind: cupboard, temperature: {weekday: 22 °C}}, hall: {kind: open office}}
          drops: {K-1..K-4: {from: closet, to: hall, length: 20 m, cable: cat6-24}}
          endpoints: {ap-1..ap-4: {model: dish, drop: K-1..K-4}}
        designs: {d: {switches: {sw-1: {model: roomy, in: closet, fed-by: ups-1}}, patch: {K-1..K-4: sw-1/1..4}, standby: {ups-1: {model: keeper, in: closet{{{{{more}}}}}}}}}
        """;

    private static string Sound(string survey, string sw, string others = "store: {size: 5 x 4 x 2.5 m, kind: storeroom, surfaces: soft, temperature: {weekday: 20 °C}}, cupboard: {kind: cupboard, size: 1 x 1 x 2 m, corner: 5 x 1 m, walls: 16 mm board, exposed: [left], vents: none, beside: office, temperature: {weekday: 20 °C}}") => $$$$$"""
        survey:
          spaces: {office: {size: 5 x 4 x 2.5 m, corner: 0 x 0 m, kind: private office, surfaces: soft, background: 25 dB(A), temperature: {weekday: 20 °C}}, {{{{{others}}}}}}
          listeners: {ear: {in: office, at: 2.5 x 1.5 x 1.2 m, limit: 32 dB(A)}}
          {{{{{survey}}}}}
        designs: {d: {switches: {sw-1: { {{{{{sw}}}}} }}}}
        """;

    private static string Heat(string sw, string exposed = "[front]", string summer = "33 °C", string box = "vents: none") => $$$$$"""
        survey:
          spaces: {room: {size: 4 x 3 x 2.5 m, temperature: {summer: {{{{{summer}}}}}}}, box: {kind: cupboard, size: 0.8 x 0.5 x 1.7 m, walls: 18 mm board, exposed: {{{{{exposed}}}}}, {{{{{box}}}}}, beside: room}}
          racks: {A: {in: box, height: 12 U, depth: 450 mm}}
        designs: {d: {switches: {sw-1: { {{{{{sw}}}}} }}}}
        """;

    private static string Cable(string drop, string more = "pathways: {}", string design = "switches: {sw-1: {model: meek, in: closet}}", string policy = "{}") => $$$$$"""
        policy: {reserve: {{{{{policy}}}}}}
        survey:
          {{{{{Closet}}}}}
          {{{{{more}}}}}
          drops: {K-1: {from: closet, to: hall, {{{{{drop}}}}}}}
          lines: {line: {down: 40 Mb/s, up: 5 Mb/s}}
          endpoints: {cam-1: {model: cam, drop: K-1}}
        designs: {d: { {{{{{design}}}}} }}
        """;

    private static string Fibre(string drop) => $$$$$"""
        survey: {{{{{{Closet}}}}}, drops: {F-1: {from: closet, to: hall, {{{{{drop}}}}}}}, lines: {line: {down: 900 Mb/s, up: 900 Mb/s}}}
        designs: {d: {switches: {sw-1: {model: lit, in: closet}}, uplinks: [{from: sw-1/9, to: line, media: fibre, module: near, drop: F-1}]}}
        """;

    private static string Rack(string rack, string design) => $$$$$"""
        survey: {{{{{{Closet}}}}}, racks: {A: {in: closet, {{{{{rack}}}}}}}}
        designs: {d: {switches: { {{{{{design}}}}} }}}
        """;

    private static string Line(string up, string records = "") => $$$$$"""
        survey: {{{{{{Closet}}}}}, lines: {line: {down: 500 Mb/s, up: {{{{{up}}}}}}}, endpoints: {cam-1: {model: cam}, ap-1: {model: dish}{{{{{records}}}}}}}
        designs: {d: {switches: {sw-1: {model: roomy, in: closet}}, uplinks: [{from: sw-1/8, to: line, media: copper}], patch: {cam-1: sw-1/1, ap-1: sw-1/2}}}
        """;

    /// <summary>By kind: where it must help, how its words begin, and where it must not be offered.</summary>
    public static IReadOnlyDictionary<string, (string Helps, string Words, string Not)> Rows { get; } = new Dictionary<string, (string, string, string)>
    {
        ["setting"] = (Power("choosy"), "sw-1: reserve", Power("meek")),
        ["port limits"] = (Power("limited"), "sw-1: port limits of 7 W on 1-2", Power("meek")),
        ["priority"] = (Kept("{ap-1: sw-1/1, phone-1: sw-1/2}"), "sw-1: high priority for phone-1", Power("meek")),
        ["other port"] = (BigDish("mixed"), "K-1 from sw-1/1 to sw-1/5, which is free", Power("meek")),
        ["spread"] = (Power("meek", ", sw-2: {model: meek, in: closet}"), "ap-1 from sw-1 to sw-2", Power("meek")),
        ["shedding"] = (Battery(""), "ups-1: ports of low priority off after 10 min", Battery(", sheds: {low: 0 min}")),
        ["lower rate"] = (Cable("length: 20 m, cable: cat6-24", design: "switches: {sw-1: {model: lit, in: closet}}, patch: {K-1: sw-1/1}").Replace("cam-1: {model: cam, drop: K-1}", "cam-1: {model: cam, drop: K-1}, nvr: {model: box, recorder: {disks: 1, disk size: 1 TB, parity: 0, free: 10 %, keep: 25 d, records: [cam-1]}}", StringComparison.Ordinal), "cam-1: pictures at 75 %", Line("0.5 Mb/s").Replace("model: cam", "model: box", StringComparison.Ordinal)),
        ["fan level"] = (Sound("screens: {}", "model: loud, in: office, at: 3 x 1.5 x 1.2 m, level: 2"), "sw-1: fan level 1", Sound("screens: {}", "model: steady, in: office, at: 3 x 1.5 x 1.2 m")),
        ["move"] = (Sound("screens: {}", "model: steady, in: office, at: 4 x 1.5 x 1.2 m"), "sw-1 into store", Sound("screens: {}", "model: steady, in: office, at: 2.5 x 2 x 1.2 m", "store: {kind: storeroom}")),
        ["cords"] = (Cable("length: 40 m, cable: cat6-24, panel cord: 3 m of cord-28, device cord: 14 m of cord-28"), "K-1: cords of 5 m at most", Cable("length: 95 m, cable: cat6-24")),
        ["supply"] = (Power("twofold"), "sw-1: supply 'large' in place of 'in'", Power("meek")),
        ["switch model"] = (Power("meek"), "sw-1: mixed in place of meek", Cable("length: 95 m, cable: cat6-24")),
        ["injector model"] = (Radio("v24"), "feed: moth-b in place of v24", Power("meek")),
        ["injector"] = (BigDish("meek"), "ap-1: an injector osier of its own, in closet", Radio("v24")),
        ["nearer"] = (Radio("v24"), "feed into hall, at its end of K-1", Power("meek")),
        ["device model"] = (Power("meek"), "ap-1 and ap-2: small-dish in place of dish", Cable("length: 95 m, cable: cat6-24")),
        ["midspan"] = (Power("meek"), "ap-1 and ap-2: fed from a midspan pollard", Radio("v24")),
        ["standby model"] = (Battery(""), "ups-1: holder in place of keeper", Power("meek")),
        ["batteries"] = (Battery(", batteries: 9 years", 150), "ups-1: new batteries", Battery("")),
        ["other fan"] = (Heat("model: hot, in: room, fan: weak"), "sw-1: fan maker in place of weak", Heat("model: warm, in: box")),
        ["panels"] = (Heat("model: hot, in: A", "[front, sides, top]", "42 °C", "vents: 800 cm2, vents apart: 1.2 m"), "A: panels over its empty units", Heat("model: warm, in: box")),
        ["vents"] = (Heat("model: hot, in: box"), "box: vents of 400 cm²", Heat("model: hot, in: room", summer: "47 °C")),
        ["door seal"] = (Sound("partitions: {wall: {between: [office, store], area: 10 m2, reduction: 45 dB, door: 2 m2, door reduction: 35 dB, gap: 400 cm2}}", "model: roar, in: store, at: 2 x 2 x 1 m"), "wall: the door sealed, 40 cm2 of gap left", Sound("screens: {}", "model: steady, in: office, at: 3 x 1.5 x 1.2 m")),
        ["door"] = (Sound("partitions: {wall: {between: [office, store], area: 10 m2, reduction: 45 dB, door: 2 m2, door reduction: 12 dB}}", "model: roar, in: store, at: 2 x 2 x 1 m"), "wall: a door that keeps 37 dB", Sound("screens: {}", "model: steady, in: office, at: 3 x 1.5 x 1.2 m")),
        ["lining"] = (Sound("screens: {}", "model: roar, in: cupboard"), "cupboard: a second layer of board", Sound("screens: {}", "model: steady, in: office, at: 3 x 1.5 x 1.2 m")),
        ["barrier"] = (Cable("length: 40 m, cable: cat6-24, by: tray", "pathways: {tray: {kind: tray, area: 60 cm2, already: none, mains beside: 3 circuits of 16 A, barrier: none, apart: 2 mm}}"), "tray: a wall of steel", Cable("length: 95 m, cable: cat6-24")),
        ["other cable"] = (Radio("v24"), "K-1: cat6-23 in place of cat5e-24", Power("meek")),
        ["cooler way"] = (Cable("length: 88 m, cable: cat6-24, by: loft", "pathways: {loft: {kind: tray, ambient: 48 °C, mains beside: none}, hall-tray: {kind: tray, ambient: 20 °C, mains beside: none}}"), "K-1 by hall-tray in place of loft", Cable("length: 95 m, cable: cat6-24")),
        ["wider way"] = (Cable("length: 40 m, cable: cat6-24, by: pipe", "pathways: {pipe: {kind: conduit, inside: 15.8 mm, already: 3 x 6 mm, mains beside: none}}"), "pipe: a conduit of trade size 1, 26.6 mm inside", Cable("length: 95 m, cable: cat6-24")),
        ["connectors"] = (Fibre("length: 200 m, cable: om4-8, mated pairs: 6"), "F-1: 2 mated pairs in place of 6", Fibre("length: 200 m, cable: om4-8, mated pairs: 2, splices: 9")),
        ["cabinet"] = (Rack("height: 4 U, depth: 310 mm, plugs behind: 55 mm, load: 40 kg", "sw-1: {model: racked, in: A, unit: 1}"), "A: the cabinet recess", Power("meek")),
        ["modules"] = (Fibre("length: 700 m, cable: om4-8"), "the link from sw-1/9 to line: modules", Power("meek")),
        ["larger line"] = (Line("1 Mb/s"), "line: 50 Mb/s up", Power("meek")),
    };

    private static string BigDish(string model) => $$$$$"""
        survey: {{{{{{Closet}}}}}, drops: {K-1: {from: closet, to: hall, length: 20 m, cable: cat6-24}}, endpoints: {ap-1: {model: big-dish, drop: K-1}}}
        designs: {d: {switches: {sw-1: {model: {{{{{model}}}}}, in: closet}}, patch: {K-1: sw-1/1}}}
        """;

    private static string Radio(string injector) => $$$$$"""
        survey:
          spaces: {closet: {kind: cupboard}, hall: {kind: open office}}
          drops: {K-1: {from: closet, to: hall, length: 90 m, cable: cat5e-24, ambient: 25 °C}}
          endpoints: {radio-1: {model: far-radio, drop: K-1}}
        designs: {d: {injectors: {feed: {model: {{{{{injector}}}}}, in: closet}}, patch: {K-1: feed}}}
        """;
}

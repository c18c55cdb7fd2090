using System.Text;
using Headroom.Domain.Findings;
using Headroom.JobFiles.Changes;
using Headroom.JobFiles.Editing;
using Headroom.JobFiles.Files;
using Headroom.JobFiles.Sheets;
using Headroom.JobFiles.Tests.Record;
using Headroom.JobFiles.Tests.Sheets;
using Headroom.JobFiles.Yaml;

namespace Headroom.JobFiles.Tests.Codes;

/// <summary>An input for each code of a finding, invented, and what reading it comes to.</summary>
internal static class CodeInputs
{
    private const string Head = "headroom: 1\njob: x\n";

    private static readonly string Long = new('x', 600);

    /// <summary>The inputs by code; rules have a table of their own in the tests of Domain.</summary>
    public static IReadOnlyDictionary<string, Func<IEnumerable<Finding>>> Rows { get; } = All().ToDictionary(row => row.Code, row => row.Read);

    private static IEnumerable<(string Code, Func<IEnumerable<Finding>> Read)> All() =>
        Files().Concat(Texts()).Concat(Jobs()).Concat(Models()).Concat(Firms()).Concat(Sheets()).Concat(Edits()).Concat(Records());

    private static IEnumerable<(string, Func<IEnumerable<Finding>>)> Files() =>
    [
        ("FILE001", () => TextFile.Read("no-such-file.yaml").Findings),
        ("FILE002", () => TextFile.Read(Repository.Root).Findings),
        ("FILE003", Unreadable),
        ("FILE004", () => Read(new byte[TextFile.MostBytes + 1])),
        ("FILE006", () => Read([.. "job: x"u8, 0])),
        ("FILE007", () => Read(Encoding.Unicode.GetPreamble())),
        ("FILE008", () => Read([.. "job: "u8, 0xFC])),
    ];

    private static IEnumerable<(string, Func<IEnumerable<Finding>>)> Texts() => new (string Code, string Text)[]
    {
        ("FILE005", ""), ("FILE009", "job: \u0001"), ("FILE010", "job: \u202E"), ("FILE011", "job:\n\tx: 1"), ("FILE012", "a: &b 1"), ("FILE013", "a: {<<: {}}"),
        ("FILE014", "a: !b 1"), ("FILE015", new string('[', 40) + new string(']', 40)), ("FILE016", "[" + string.Concat(Enumerable.Repeat("a,", 2_100_000)) + "a]"),
        ("FILE017", "a: 1\n---\nb: 2"), ("FILE018", "a: [1"), ("FILE019", "? [a]\n: 1"), ("FILE020", string.Concat(Enumerable.Repeat("\u202E", 60))), ("FILE021", "a: 1\na: 2"),
    }.Select(row => (row.Code, (Func<IEnumerable<Finding>>)(() => YamlText.Parse(row.Text, "f").Findings)));

    private static IEnumerable<(string, Func<IEnumerable<Finding>>)> Jobs() => new (string Code, string Text)[]
    {
        ("JOB001", Head + "jobb: y"), ("JOB002", Drop("K-1: {from: a}, K-1..K-2: {from: a}")), ("JOB003", "headroom: 1"), ("JOB004", Head + "survey: [a]"),
        ("JOB005", Drop("K-1: {from: a, length: }")), ("JOB006", Drop("K-1: {from: a, length: 31}")), ("JOB007", Drop("K-1: {from: a, length: 31 W}")),
        ("JOB008", Drop("K-1: {from: a, length: '31,5 m'}")), ("JOB009", Drop("K-1: {from: a, length: far}")), ("JOB010", Drop("K-1: {from: a, length: 9000 m}")),
        ("JOB011", Head + "survey: {spaces: {a: {kind: kichen}}}"), ("JOB012", Drop("K/1: {from: a}")), ("JOB013", Drop("K-1: {from: a, length: 9..3 m}")),
        ("JOB014", "headroom: 9\njob: x"), ("JOB015", Drop("K-1: {from: a, length: 3 m, pieces: [{length: 3 m}]}")), ("JOB016", $"headroom: 1\njob: {Long}"),
        ("JOB017", Head + "designs: {d: {patch: {K-1: sw-1/0}}}"), ("JOB019", Head + "survey: {noises: {copier: {in: a, power: 4 B, bands: {63: 38 dB}}}}"), ("JOB020", Drop("K-9..K-1: {from: a}")), ("JOB021", Head + "designs: {d: {patch: {K-1..K-3: sw-1/1..2}}}"),
        ("JOB022", Drop(string.Join(", ", Enumerable.Range(0, 210).Select(n => $"K{n}-000..K{n}-999: {{from: a}}")))),
    }.Select(row => (row.Code, (Func<IEnumerable<Finding>>)(() => JobFile.Parse(row.Text, "job.yaml", null).Findings)));

    private static IEnumerable<(string, Func<IEnumerable<Finding>>)> Models() => new (string Code, string Text)[]
    {
        ("CAT001", Phone("kindd: x")), ("CAT002", "fans: {x: {rated: 12 V, curve: {1 m3/h: 3 Pa, 1.0 m3/h: 2 Pa}}}"), ("CAT003", "endpoints: {x: {kind: phone}}"), ("CAT004", "endpoints: [x]"),
        ("CAT005", Phone("about: ")), ("CAT006", Phone("weight: 3")), ("CAT007", Phone("weight: 3 m")), ("CAT008", Phone("weight: '3,1 kg'")), ("CAT009", Phone("weight: much")),
        ("CAT010", Phone("weight: 900000 kg")), ("CAT011", "endpoints: {x: {kind: fone, power: none}}"), ("CAT012", "endpoints: {'x/': {kind: phone, power: none}}"), ("CAT013", Phone("ambient: 45..0 °C")),
        ("CAT014", "catalogue: 9"), ("CAT015", Switch("sound: {levels: {1: {power: 4 B, pressure: 30 dB(A), distance: 1 m}}}")), ("CAT016", Phone($"about: {Long}")),
        ("CAT017", "switches: {x: {ports: {first: {media: copper, power: none}}, supplies: {s: {}}}}"), ("CAT019", Switch("sound: {levels: {1: {power: 4 B, bands: {63: 38 dB}}}}")), ("CAT030", Phone("draws: {typical: 3 W, peak: 2 W}")),
        ("CAT031", "endpoints: {x: {kind: phone, power: {class: 1}}}"), ("CAT032", "endpoints: {x: {kind: phone, power: {class: 1}, draws: {peak: 9 W}}}"),
        ("CAT033", "switches: {x: {ports: {1..4: {media: copper, power: none}, 3..8: {media: copper, power: none}}, supplies: {s: {}}}}"),
        ("CAT034", "switches: {x: {ports: {2..4: {media: copper, power: none}}, supplies: {s: {}}}}"), ("CAT035", Switch("sound: {levels: {2: {power: 4 B}}}")),
        ("CAT036", "fans: {x: {rated: 12 V, curve: {1 m3/h: 3 Pa, 2 m3/h: 4 Pa}}}"), ("CAT037", "endpoints: {x: {like: y}}"), ("CAT038", "endpoints: {x: {like: y}, y: {like: x}}"),
        ("CAT040", Switch("about: x", "s: {ports together: 9 W, rated: 3 W}")), ("CAT042", Switch("about: x", "s: {ports together: 9 W, one lost: 5 W}")),
    }.Select(row => (row.Code, (Func<IEnumerable<Finding>>)(() => Catalogue(row.Text))))
        .Append(("CAT039", TwoFiles))
        .Append(("CAT041", () => CatalogueCsv.Parse("id;weight\nx;3 kg\n", "own.csv").Findings));

    private static IEnumerable<(string, Func<IEnumerable<Finding>>)> Firms() => new (string Code, string Text)[]
    {
        ("FRM001", "nmae: x"), ("FRM002", "valid days: 3\nvalid-days: 4"), ("FRM003", "labels: {a: {paper: A4}}"), ("FRM004", "labels: [a]"), ("FRM005", "mail:"), ("FRM006", "labels: {a: {strip: 12}}"),
        ("FRM007", "labels: {a: {strip: 12 kg}}"), ("FRM008", "labels: {a: {strip: '12,5 mm'}}"), ("FRM009", "colour: dark blue"), ("FRM010", "labels: {a: {strip: 900 mm}}"), ("FRM011", "units: furlongs"),
        ("FRM012", "tax numbers: {'/': x}"), ("FRM013", "labels: {a: {strip: 12..9 mm}}"), ("FRM014", "firm: 9"), ("FRM015", "labels: {a: {strip: 12 mm, paper: A4}}"), ("FRM016", $"web: {Long}"),
        ("FRM050", "logo: none.png"), ("FRM052", "logo: text.svg"), ("FRM053", "colour: '#777777'"), ("FRM054", "quote number: 'Q-{yaer}'"),
        ("FRM055", "labels: {a: {paper: A4, columns: 4, rows: 1, width: 70 mm, height: 30 mm}}"),
    }.Select(row => (row.Code, (Func<IEnumerable<Finding>>)(() => OfFirm(row.Text))))
        .Append(("FRM051", () => OfFirm("logo: large.png")))
        .Append(("FRM056", () => [FirmFile.OtherCurrency(new Domain.Firms.Firm("x", Place.None) { Currency = ("GBP", new Place("firm.yaml", 3, 11)) }, "EUR")!]));

    private static IReadOnlyList<Finding> OfFirm(string text)
    {
        using var folder = new SheetFolder(Head);
        folder.Put("large.png", new string('x', 1024 * 1024 + 1));
        folder.Put("text.svg", "<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 9 9'><text>x</text></svg>");
        folder.Put("firm.yaml", text.StartsWith("firm", StringComparison.Ordinal) ? text + "\nname: x\n" : $"firm: 1\nname: x\n{text}\n");
        return FirmFile.Read(folder.PathOf("firm.yaml")).Findings;
    }

    private static IEnumerable<(string, Func<IEnumerable<Finding>>)> Sheets() => new (string Code, string Kind, string Text)[]
    {
        ("SHT001", "drops", "drop;room\nK-1;\"a"), ("SHT002", "drops", new string(';', 300)), ("SHT003", "drops", "drop,room;by\nK-1,a;b\n"), ("SHT005", "drops", "drop;room\n"),
        ("SHT006", "drops", "drop;rooom\nK-1;a\n"), ("SHT007", "drops", "drop;room;to\nK-1;a;b\n"), ("SHT008", "drops", "a;b\n1;2\n"), ("SHT009", "drops", "drop;length\nK-1;31\n"),
        ("SHT010", "drops", "drop;length (m)\nK-1;1.500\n"), ("SHT011", "drops", "drop;length (m)\nK-1;1,5\nK-2;2,5\nK-3;3.5\n"), ("SHT012", "readings", "date;place;value\n3/4/2026;x;1 W\n"),
        ("SHT013", "drops", "drop;room\n1-Mar;a\n"), ("SHT014", "drops", "drop;room\n1E+12;a\n"), ("SHT015", "patching", "drop,port\n7,sw-1/1\n"), ("SHT016", "drops", "drop;room\nK-1;=A1\n"),
        ("SHT017", "drops", "drop;room\nK-1;#N/A\n"), ("SHT018", "drops", "drop;room\nK-1;a;b\n"), ("SHT019", "drops", "drop;length (m)\nK-1;\n"), ("SHT020", "drops", "drop;room\nK-1;a\nK-1;b\n"),
        ("SHT021", "drops", "drop;room\n;a\n"), ("SHT026", "readings", "date;place;value\n46340;x;1 W\n"), ("SHT027", "endpoints", "device;model;mac\na;pipit;wrong\n"),
    }.Select(row => (row.Code, (Func<IEnumerable<Finding>>)(() => SheetDesk.Read(row.Kind, row.Text).Findings)))
        .Append(("SHT004", () => SheetDesk.Read(SheetDesk.Plan("drops"), [.. "drop;room\nK-1;B"u8, 0xFC, .. "ro\n"u8]).Findings))
        .Append(("SHT022", () => JobFile.Parse(Head + "sheets: [{file: ../a.csv, as: drops}]\n", "job.yaml", null, "").Findings))
        .Append(("SHT023", () => SheetDesk.Read(SheetDesk.Plan("drops") with { Columns = [new("Run", "length")] }, "drop;room\nK-1;a\n").Findings))
        .Append(("SHT024", NoDesign))
        .Append(("SHT025", InJob))
        .Append(("SHT028", () => Firm("Site,Model,Mode,Watts\na yard,bulrush,sideways,7.9\n")))
        .Append(("SHT030", () => Amended("a;b\n", null)))
        .Append(("SHT031", () => Amended("drop;length [m]\nK-2;9\n", "drops")))
        .Append(("SHT032", () => Amended("drop;to\nK-1;a\n", "drops")))
        .Append(("SHT034", () => Amended("drop;from\nK-1;a\n", "drops", "K-1")))
        .Append(("SHT033", () => Amended("drop;from\nK-1;\n", "drops")))
        .Append(("SHT029", () => Firm("Site,Model,Mode,Watts\na yard,bulrush,typical,much\n")));

    private static IEnumerable<(string, Func<IEnumerable<Finding>>)> Edits() =>
    [
        ("EDT001", () => JobFileEditor.PutDesign("- a\n", "d", "{}").Findings),
        ("EDT002", () => JobFileEditor.PutDesign("designs: [a]\n", "d", "{}").Findings),
        ("EDT003", () => JobFileEditor.PutDesign("job: x\n", "d", "[]").Findings),
        ("EDT004", () => JobFileEditor.PutDesign("designs:\n  ? a\n  : {like: b}\n", "d", "{}").Findings),
        ("EDT005", () => FieldText.Of("{length: 3 m").Findings),
    ];

    private static IEnumerable<(string, Func<IEnumerable<Finding>>)> Records() => new (string Code, string File, string Text)[]
    {
        ("REC001", "none.txt", "x"), ("REC002", "failure.csv", "x"), ("REC003", "fleet.csv", RecordDesk.Fleet("a;alder;1;2023-02-30;;;;")), ("REC004", "fleet.csv", RecordDesk.Fleet("a;alder;1;2023-02-03;;;140 %;")),
        ("REC005", "fleet.csv", RecordDesk.Fleet("a;alder;1;2023-02-03;2022-02-03;;;")), ("REC009", "fleet.csv", RecordDesk.Fleet("a;alder;1;;;;;")), ("REC010", "hours.csv", "job;price;goods\na;3 EUR;3 USD\n"),
        ("REC011", "shelf.csv", "model;spares\nalder;many\n"), ("REC012", "shelf.csv", "model;spares\nalder;1\nalder;2\n"), ("REC013", "shelf.csv", "model;spares\naldr;1\n"),
        ("REC015", "fleet.csv", RecordDesk.Fleet("a;alder;1;2023-02-03;;;;30 °C\nb;alder;1;2023-02-03;;;;")),
    }.Select(row => (row.Code, (Func<IEnumerable<Finding>>)(() => RecordDesk.Read((row.File, row.Text)).Findings)))
        .Append(("REC006", () => RecordDesk.Failed("a;alder;1;2023-02-03;;;;", "b;alder;2024-02-03;;").Findings))
        .Append(("REC007", () => RecordDesk.Failed("a;alder;1;2023-02-03;;;;\na;alder;1;2023-03-03;;;;", "a;alder;2024-02-03;;").Findings))
        .Append(("REC008", () => RecordDesk.Failed("a;alder;0;2023-02-03;;;;", "a;alder;2024-02-03;;").Findings))
        .Append(("REC014", () => RecordDesk.Failed("a;alder;1;2023-02-03;;;;22 °C", "a;alder;2024-02-03;;41 °C").Findings));

    private static string Drop(string drops) => Head + $"survey: {{drops: {{{drops}}}}}";

    private static string Phone(string more) => $"endpoints: {{x: {{kind: phone, power: none, {more}}}}}";

    private static string Switch(string more, string supply = "s: {}") => $"switches: {{x: {{ports: {{1..4: {{media: copper, power: none}}}}, supplies: {{{supply}}}, {more}}}}}";

    private static IReadOnlyList<Finding> Catalogue(string text) =>
        CatalogueFiles.Parse(text.StartsWith("catalogue", StringComparison.Ordinal) ? text : "catalogue: 1\n" + text, "own.yaml", Domain.Catalogues.Catalogue.Empty).Findings;

    private static IReadOnlyList<Finding> Read(byte[] bytes)
    {
        using var stream = new MemoryStream(bytes);
        return TextFile.Read(stream, "f").Findings;
    }

    // A file that another program holds for itself alone cannot be read.
    private static IReadOnlyList<Finding> Unreadable()
    {
        using var folder = new SheetFolder(Head);
        using var held = new FileStream(folder.Job, FileMode.Open, FileAccess.ReadWrite, FileShare.None);
        return TextFile.Read(folder.Job).Findings;
    }

    private static IReadOnlyList<Finding> TwoFiles()
    {
        using var folder = new SheetFolder(Head);
        folder.Put("a.yaml", "catalogue: 1\n" + Phone("about: a"));
        folder.Put("b.yaml", "catalogue: 1\n" + Phone("about: b"));
        return CatalogueFiles.Read([folder.PathOf("a.yaml"), folder.PathOf("b.yaml")], Domain.Catalogues.Catalogue.Empty).Findings;
    }

    private static IReadOnlyList<Finding> Amended(string table, string? kind, params string[] takeOut)
    {
        using var folder = new SheetFolder(Head + "survey: {spaces: {a: {kind: reception}}, drops: {K-1: {from: a}, K-2: {from: a, pieces: [{length: 3 m}, {length: 4 m}]}}}\n");
        folder.Put("table.csv", table);
        return JobAmending.Read(folder.Job, new AmendPlan(folder.PathOf("table.csv"), kind) { TakeOut = takeOut }, Domain.Catalogues.Catalogue.Empty).Findings;
    }

    private static IReadOnlyList<Finding> Firm(string text)
    {
        using var folder = new SheetFolder(Head);
        folder.Put("firm.csv", text);
        return FirmReadingFile.Read(folder.PathOf("firm.csv")).Findings;
    }

    private static IReadOnlyList<Finding> NoDesign()
    {
        using var folder = new SheetFolder(Head + "sheets: [{file: p.csv, as: patching}]\n");
        folder.Put("p.csv", "drop,port\nK-1,sw-1/1\n");
        return folder.Read().Findings;
    }

    private static IReadOnlyList<Finding> InJob()
    {
        using var folder = new SheetFolder(("drops", "drop;room\nK-1;hall\n"));
        return SheetImport.Read(folder.Job, new SheetPlan(folder.PathOf("drops.csv"), "drops", Place.None), Domain.Catalogues.Catalogue.Empty).Findings;
    }
}

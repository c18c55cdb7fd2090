using System.Collections.Concurrent;
using System.Text;
using Headroom.Domain.Catalogues;
using Headroom.Domain.Findings;
using Headroom.JobFiles.Sheets;
using Headroom.JobFiles.Tests.Sheets;

namespace Headroom.JobFiles.Tests.Fuzz;

/// <summary>
/// Files that are nearly right: 100 000 of them over all readers, a million in a long run. None makes a reader fail or hang, none takes
/// much memory, and whatever is found has its place. The good ones are invented.
/// </summary>
public sealed class FuzzTests
{
    private const int InAll = 1_000_000;

    // A good job of this size takes a fiftieth of it; a range may stand for some thousand things.
    private const long MostBytes = 100_000_000;

    private static readonly Catalogue Shipped = CatalogueFiles.ReadShipped().Value!;

    private static readonly string[] Jobs =
    [
        SheetDesk.Job,
        """
        headroom: 1
        job: Fuzz
        client: {name: x, paper: A4, currency: EUR}
        policy: {reserve: {power: 20 %, ports: 2}, growth: {all ports: 4}}
        survey:
          spaces:
            hall: {size: 6 x 5 x 2.7 m, kind: reception, temperature: {summer: 28 °C}}
            cupboard: {size: 0.9 x 0.6 x 1.9 m, kind: cupboard, exposed: [front, top], beside: hall}
          racks: {A: {in: cupboard, height: 12 U}}
          pathways: {loft: {kind: conduit, inside: 35 mm}}
          drops:
            K-01..K-03: {from: cupboard, to: hall, length: 31 m, cable: cat6-23}
            K-04: {from: cupboard, pieces: [{length: 120 ft, by: loft}, {length: 4 m}]}
          endpoints:
            ap-1..ap-3: {model: bulrush, drop: K-01..K-03, hardware: 02:00:5e:10:00:01}
            2 x pipit: {near: hall}
        chosen: d
        designs:
          d:
            switches: {sw-1: {model: wren-b, in: A, unit: 1, port-limit: {5..8: 15.4 W}, priority: {ap-1: critical}}}
            uplinks: [{from: sw-1/25, to: line}]
            patch: {K-01..K-03: sw-1/1..3, pipit-1: sw-1/4}
          e: {like: d, uplinks: none}
        prices: [{model: wren-b, cost: 212 EUR, on: 2026-11-20}]
        readings:
          - {what: watts, at: sw-1/1, value: 6.4 ± 0.1 W, with: meter, on: 2026-11-14, while: night}
        overrulings: [{entry: power/sw-1/watts, because: seen, by: me, on: 2026-11-15}]
        """,
    ];

    private static readonly (string Kind, string Text)[] Sheets =
    [
        ("drops", "Outlet;Room;Length (m);Cable;Bundle;Remark\nK-01;hall;31,5;cat6-23;12;\nK-02..K-04;hall;1.234,5;cat6-23;;\"a;b\"\nK-05;;100 ft;;;\n"),
        ("endpoints", "device,model,drop,mac,peak (W),qty\nap-1,bulrush,01,0200.5e10.0001,6.4,\n,pipit,,,\"1,5\",12\n"),
        ("patching", "drop\tswitch\tport\n01\tsw-1\t3\n02\tsw-1\t03-Jan\n\tsw-1\t4\n"),
        ("readings", "date;place;quantity;value;unit;instrument\r\n14.11.2026;sw-1/1;power;6,4;W;meter\r\n03/04/2026;desk;sound;47.6;dB(A);\r\n"),
        ("prices", "item,cost,supplier,date\nalder,\"1,250\",Hollow Lane,2026-11-20\npipit,€ 41.50,,20.11.2026\n"),
    ];

    private const string Table = "as;id;kind;power.class;power.type;draws.typical (W);weight\nendpoints;own-1;phone;1;;2,5;0,4 kg\nswitches;own-2;;;;;3 kg\n";

    private static readonly string[] Pieces =
    [
        "\n", "\r", "\t", "  ", ": ", "- ", "? ", "#", "&a", "*a", "!x", "|\n", ">", "'", "\"", "[", "]", "{", "}", ",", ";", "..", "±", "..9999", "unknown", "none", "?", "~",
        "\uFEFF", "\0", "\u202E", "\u200B", "=1+1", "#REF!", "####", "1E+12", "01-Jan", "1.500", "1,500", "0x", "-", "999999999999", "K-1..K-9", "12 x pipit", " m", " ft", "sep=;", "like: d", "as: drops",
    ];

    [Fact]
    public void A_job_that_is_nearly_right_is_read_or_refused() =>
        Run(45, Jobs, (text, _) => JobFile.Parse(text, "job.yaml", Shipped) is var read ? (read.Value is not null, read.Findings) : default);

    [Fact]
    public void A_sheet_that_is_nearly_right_is_read_or_refused() => Run(
        45,
        [.. Sheets.Select(sheet => sheet.Text)],
        (text, number) =>
        {
            // Each kind of sheet meets the texts of all; every third comes as bytes of an older encoding.
            var plan = SheetDesk.Plan(Sheets[number % Sheets.Length].Kind);
            var sheet = SheetDesk.Read(plan, number % 3 == 0 ? Encoding.Latin1.GetBytes(text) : Encoding.UTF8.GetBytes(text));
            var job = sheet.Entries.Count == 0 ? [] : JobFile.Build(Joined(sheet), [], () => Shipped, null).Findings;
            return (sheet.Entries.Count > 0 || sheet.Rows.All > 0, (IReadOnlyList<Finding>)[.. sheet.Findings, .. job]);
        });

    [Fact]
    public void A_table_of_models_that_is_nearly_right_is_read_or_refused() => Run(
        10,
        [Table],
        (text, _) =>
        {
            var read = CatalogueCsv.Parse(text, "own.csv");
            return (read.Value is not null, read.Findings);
        });

    private static Headroom.JobFiles.Yaml.YamlNode Joined(SheetRead sheet) => Headroom.JobFiles.Yaml.TreeGraft.Put(
        SheetDesk.Root,
        sheet.Kind == SheetKinds.Patching ? ["designs", "d", "patch"] : sheet.Kind.Section,
        sheet.Entries,
        sheet.Kind.IsList)!;

    // On both cores at once. Each text is made of its own number, so that one that fails can be had again.
    private static void Run(int percent, string[] good, Func<string, int, (bool Read, IReadOnlyList<Finding> Findings)> read)
    {
        var failed = new ConcurrentBag<string>();
        Parallel.For(0, Long.Samples(InAll) / 100 * percent, new ParallelOptions { MaxDegreeOfParallelism = 2 }, (number, state) =>
        {
            var text = new Mutations(good, Pieces, number).Next();
            if (Complaint(text, number, read) is not { } complaint)
                return;
            failed.Add($"number {number}: {complaint}\n{text}\n");
            state.Stop();
        });
        Assert.True(failed.IsEmpty, string.Join('\n', failed));
    }

    private static string? Complaint(string text, int number, Func<string, int, (bool Read, IReadOnlyList<Finding> Findings)> read)
    {
        try
        {
            var before = GC.GetAllocatedBytesForCurrentThread();
            var (isRead, findings) = read(text, number);
            var spent = GC.GetAllocatedBytesForCurrentThread() - before;
            if (spent > MostBytes)
                return $"{spent} bytes";
            if (!isRead && findings.Count == 0)
                return "neither a value nor a finding";
            return findings.FirstOrDefault(finding => finding.At.File.Length == 0 || finding.Given.Length == 0 || finding.Allowed.Length == 0 || finding.Advice.Length == 0) is { } bare ? $"a finding that does not say all: {bare}" : null;
        }
        catch (Exception fault) when (fault is not OutOfMemoryException)
        {
            return fault.ToString();
        }
    }
}

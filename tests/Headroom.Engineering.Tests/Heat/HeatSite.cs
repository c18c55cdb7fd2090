using Headroom.Domain.Catalogues;
using Headroom.Domain.Jobs;
using Headroom.Domain.Ledgers;
using Headroom.Engineering.Tests.Studies;
using Headroom.JobFiles;

namespace Headroom.Engineering.Tests.Heat;

/// <summary>A small site for a test of heat, as somebody would write it down; all figures are invented.</summary>
internal sealed record HeatSite
{
    private const string Models = """
        catalogue: 1
        switches:
          plain: {ports: {1..8: {speed: 1 Gb/s, media: copper, power: at}}, supplies: {in: {ports together: 90 W, rated: 120 W, efficiency: {50 %: 100 %}}}, base: 40 W, ambient: 0..45 °C, altitude: 2000 m}
          unrated: {like: plain, ambient: unknown}
          still: {like: plain, base: 12 W, sound: {fans: 0}, size: 200 x 130 x 30 mm}
          moving: {like: plain, sound: {fans: 1, levels: {1: {power: 3.8 B, from: 0 °C, flow: 10 m3/h}}}}
          stepped: {like: plain, sound: {fans: 2, levels: {1: {power: 3.8 B, from: 0 °C, flow: 10 m3/h}, 2: {power: 4.8 B, from: 30 °C, flow: 40 m3/h}}}}
          fanned: {like: plain, sound: {fans: 2, levels: {1: {power: 4.4 B, from: 0 °C, flow: 20 m3/h}}}, fan: maker}
        fans:
          maker: {rated: 12 V, start: 4 V, current: 100 mA, speed: 8000 rpm, curve: {0 m3/h: 80 Pa, 5 m3/h: 60 Pa, 10 m3/h: 36 Pa, 17 m3/h: 0 Pa}, power: 4.1 B, holes: 32 mm, wires: 3, tachometer: yes, size: 40 x 20 x 40 mm}
          weak: {like: maker, speed: 5000 rpm, curve: {0 m3/h: 20 Pa, 5 m3/h: 10 Pa, 9 m3/h: 0 Pa}, power: 2.9 B}
          strong: {like: maker, curve: {0 m3/h: 160 Pa, 10 m3/h: 120 Pa, 30 m3/h: 0 Pa}, power: 5.1 B}
          dumb: {like: strong, wires: 2, tachometer: no, holes: 41 mm}
          high: {like: maker, rated: 24 V, start: 13 V}
          low: {like: maker, rated: 5 V, start: 3 V}
          shapeless: {rated: 12 V}
        cabinets:
          steel: {kind: cabinet, size: 600 x 450 x 370 mm}
          open: {kind: frame, size: 600 x 450 x 370 mm}
        """;

    private static readonly Lazy<Catalogue> Own = new(() => CatalogueFiles.Parse(Models, "own.yaml", CatalogueFiles.ReadShipped().Value!).Value!);

    public string Spaces { get; init; } = "room: {size: 4 x 3 x 2.5 m, temperature: {weekday: 22 °C, summer: 28 °C}}, box: {kind: cupboard, size: 0.8 x 0.5 x 0.7 m, walls: 18 mm board, exposed: [front, sides, top], vents: none, beside: room}";

    public string Racks { get; init; } = "";

    public string Survey { get; init; } = "";

    public string Switches { get; init; } = "sw-1: {model: plain, in: box}";

    public string Readings { get; init; } = "";

    public string Policy { get; init; } = "";

    public string Yaml => $$"""
        headroom: 1
        job: made up
        policy:
          reserve: { {{Policy}} }
        survey:
          {{Survey}}
          spaces: { {{Spaces}} }
          racks: { {{Racks}} }
        designs:
          only:
            switches: { {{Switches}} }
        readings: [{{Readings}}]
        """;

    public LedgerEntry Entry(string id = "heat/sw-1/inlet") => Study().Entries.Single(entry => entry.Id == id);

    public LedgerEntry? Maybe(string id = "heat/sw-1/inlet") => Study().Entries.SingleOrDefault(entry => entry.Id == id);

    public double Inlet => Entry().Demand!.Value;

    public Ledger Study() => Engineering.Study.Run(Job, Own.Value, StudyRequest.Whole(Site.Today));

    public IReadOnlyList<string> Complaints => [.. JobFile.Parse(Yaml, "job.yaml", Own.Value).Findings.Select(finding => finding.ToString())];

    private Job Job
    {
        get
        {
            var read = JobFile.Parse(Yaml, "job.yaml", Own.Value);
            Assert.True(read.Ok, string.Join('\n', read.Findings) + "\n" + Yaml);
            return read.Value!;
        }
    }
}

using Headroom.Domain.Catalogues;
using Headroom.Domain.Jobs;
using Headroom.Domain.Ledgers;
using Headroom.Engineering.Acoustics;
using Headroom.Engineering.Binding;
using Headroom.Engineering.Tests.Studies;
using Headroom.JobFiles;

namespace Headroom.Engineering.Tests.Acoustics;

/// <summary>A small site for a test of sound, as somebody would write it down; all figures are invented.</summary>
internal sealed record SoundSite
{
    private const string Models = """
        catalogue: 1
        switches:
          still: {ports: {1..8: {speed: 1 Gb/s, media: copper, power: at}}, supplies: {in: {ports together: 90 W, rated: 120 W}}, base: 5 W, sound: {fans: 0}}
          hum: {like: still, sound: {fans: 1, levels: {1: {power: 4.4 B declared}}}}
          five: {like: still, sound: {fans: 1, levels: {1: {power: 5.2 dB}}}}
          pressed: {like: still, sound: {fans: 1, levels: {1: {pressure: 44 dB(A), distance: 1 m}}}, size: 440 x 250 x 44 mm}
          near: {like: still, sound: {fans: 1, levels: {1: {pressure: 55 dB(A), distance: 2 cm}}}, size: 440 x 250 x 44 mm}
          stepped: {like: still, sound: {fans: 2, levels: {1: {power: 3.8 B declared, from: 0 °C, from watts: 0 W}, 2: {power: 4.8 B declared, from: 30 °C, from watts: 40 W}, 3: {power: 5.8 B declared, from: 40 °C, from watts: 80 W}}}}
          toned: {like: still, sound: {fans: 1, levels: {1: {power: 4.4 B declared, bands: {63: 10 dB, 125: 10 dB, 250: 10 dB, 500: 10 dB, 1k: 44 dB, 2k: 10 dB, 4k: 10 dB, 8k: 10 dB}}}}}
        cabinets:
          box: {kind: cabinet, insertion loss: 6 dB}
          bare: {kind: cabinet}
        """;

    private static readonly Lazy<Catalogue> Own = new(() => CatalogueFiles.Parse(Models, "own.yaml", CatalogueFiles.ReadShipped().Value!).Value!);

    /// <summary>The open air with a switch of 44 dB(A) at 1 m from an ear, and 30 dB(A) of background.</summary>
    public static SoundSite Yard => new() { Spaces = "yard: {kind: outdoors, background: 30 dB(A), temperature: {weekday: 20 °C}}", Room = "yard" };

    /// <summary>An office of 4 x 3 x 2.5 m with the same.</summary>
    public static SoundSite Office => new() { Spaces = "office: {size: 4 x 3 x 2.5 m, kind: private office, surfaces: soft, background: 30 dB(A), temperature: {weekday: 20 °C}}", Room = "office" };

    public string Spaces { get; init; } = "";

    public string Room { get; init; } = "";

    public string Listener { get; init; } = "at: 2.5 x 1.5 x 1.2 m, limit: 40 dB(A)";

    /// <summary>More sections of the survey, each on a line of its own.</summary>
    public string More { get; init; } = "";

    public string Switches { get; init; } = "sw-1: {model: hum, in: ROOM, at: 1.5 x 1.5 x 1.2 m}";

    public string Readings { get; init; } = "";

    public string Policy { get; init; } = "";

    public string Yaml => $$"""
        headroom: 1
        job: made up
        policy:
          reserve: { {{Policy}} }
        survey:
          spaces: { {{Spaces}} }
          listeners:
            ear: {in: ROOM, {{Listener}} }
        {{More}}
        designs:
          only:
            switches: { {{Switches}} }
        readings: [{{Readings}}]
        """.Replace("ROOM", Room, StringComparison.Ordinal);

    public LedgerEntry Entry => Study().Entries.Single(entry => entry.Id == "sound/ear/level");

    public double Equipment => Study().Figures.Single(figure => figure.Id == "sound/ear/equipment").Value!.Value;

    public AcousticResult Result => AcousticStudy.Of(Binder.Bind(Job, Own.Value, Engineering.Study.DesignOf(Job, null)!, []), _ => new SwitchLoad(0, 0));

    public Ledger Study() => Engineering.Study.Run(Job, Own.Value, StudyRequest.Whole(Site.Today));

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

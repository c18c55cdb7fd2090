using Headroom.Domain.Catalogues;
using Headroom.Domain.Ledgers;
using Headroom.Engineering.Tests.Studies;
using Headroom.JobFiles;

namespace Headroom.Engineering.Tests.Traffic;

/// <summary>A small job about what goes over cables and what fails; all figures are invented.</summary>
internal static class NetworkJob
{
    private const string Models = """
        catalogue: 1
        modules:
          quick: {speed: 10 Gb/s, media: multimode, wavelength: 850 nm, reach: {OM4: 400 m}, loss budget: 1.9 dB, mtbf: 500000 h}
        switches:
          box:
            ports:
              1..8: {speed: [100 Mb/s, 1 Gb/s], media: copper, power: at}
              9..10: {speed: [1 Gb/s, 10 Gb/s], media: pluggable, power: none}
            supplies: {inside: {ports together: 200 W, port volts: 54 V, rated: 300 W}}
            base: 20 W
            switching: 56 Gb/s
            forwarding: 41.6 Mframes/s
            mtbf: 200000 h
          plain:
            ports: {1..8: {speed: 100 Mb/s, media: copper, power: none}}
            supplies: {inside: {}}
            base: 5 W
        standby:
          block: {apparent: 600 VA, real: 400 W, mtbf: 100000 h}
        injectors:
          feed: {ports: 1, power: at, speed: 100 Mb/s, supply: {ports together: 30 W, port volts: 54 V}, mtbf: 300000 h}
        endpoints:
          cam: {kind: camera, power: {class: 3, signature: single}, draws: {typical: 4 W, peak: 6 W}, speed: 100 Mb/s, traffic: {stream: 4 Mb/s}}
          handset: {kind: phone, power: {class: 2, signature: single}, draws: {typical: 3 W, peak: 5 W}, speed: 1 Gb/s, traffic: {call share: 12 %}}
          cell: {kind: access point, power: {class: 4, signature: single}, draws: {typical: 8 W, peak: 16 W}, speed: 1 Gb/s, traffic: {users: 24, active: 10 %, down: 5 Mb/s, up: 1 Mb/s}}
          thing: {kind: other, power: {class: 1, signature: single}, draws: {typical: 1 W, peak: 2 W}, speed: 100 Mb/s}
          tower: {kind: other, power: none, speed: 1 Gb/s}
          dish: {kind: radio, power: {class: 3, signature: single}, draws: {typical: 5 W, peak: 8 W}, speed: 1 Gb/s, radio: {air: 100 Mb/s, rain: 30 Mb/s}}
          bare-dish: {kind: radio, power: {class: 3, signature: single}, draws: {typical: 5 W, peak: 8 W}, speed: 1 Gb/s, radio: {air: 100 Mb/s}}
        """;

    private static readonly Lazy<Catalogue> All = new(() =>
    {
        var read = CatalogueFiles.Parse(Models, "own.yaml", CatalogueFiles.ReadShipped().Value!);
        Assert.True(read.Ok, string.Join('\n', read.Findings));
        return read.Value!;
    });

    /// <summary>Studies a job.</summary>
    /// <param name="endpoints">The endpoints, one a line.</param>
    /// <param name="design">What the design holds, in flow style without the outer braces.</param>
    /// <param name="more">Lines of the survey beside the endpoints, such as lines.</param>
    /// <param name="top">Whole sections at the top, such as a policy or a fleet.</param>
    public static Ledger Study(string endpoints, string design, string more = "", string top = "")
    {
        var text = $$$"""
            headroom: 1
            job: network
            {{{top}}}
            survey:
              spaces: {closet: {}, room: {}}
            {{{Indent(more, 2)}}}
              endpoints:
            {{{Indent(endpoints, 4)}}}
            designs: {d: {{{{design}}}}}
            """;
        var job = JobFile.Parse(text, "job.yaml", All.Value);
        Assert.True(job.Ok, string.Join('\n', job.Findings) + "\n" + text);
        return Engineering.Study.Run(job.Value!, All.Value, StudyRequest.Whole(Site.Today));
    }

    /// <summary>One entry by its whole id.</summary>
    public static LedgerEntry The(this Ledger ledger, string id) => ledger.Entries.SingleOrDefault(entry => entry.Id == id)
        ?? throw new InvalidOperationException($"no entry {id}; there are {string.Join(", ", ledger.Entries.Select(entry => entry.Id))}");

    /// <summary>True when there is an entry.</summary>
    public static bool Holds(this Ledger ledger, string id) => ledger.Entries.Any(entry => entry.Id == id);

    private static string Indent(string text, int by) => string.Join('\n', text.Split('\n').Select(line => new string(' ', by) + line));
}

using Headroom.Domain.Catalogues;
using Headroom.Domain.Jobs;
using Headroom.Domain.Ledgers;
using Headroom.Engineering.Standby;
using Headroom.Engineering.Tests.Studies;
using Headroom.JobFiles;

namespace Headroom.Engineering.Tests.Standby;

/// <summary>A small job about an outage, written as people write one; all figures are invented.</summary>
internal static class OutageJob
{
    private const string Models = """
        catalogue: 1
        switches:
          box:
            ports: {1..12: {speed: 1 Gb/s, media: copper, power: at}, 13..14: {speed: 1 Gb/s, media: copper, power: none}}
            supplies: {inside: {ports together: 130 W, port volts: 54 V, rated: 170 W, efficiency: {50 %: 90 %}, power factor: 95 %}}
            base: 18 W
            boot: 80 s
          slow-box: {like: box, boot: unknown}
        endpoints:
          handset: {kind: phone, power: {class: 2, signature: single, capacitance: 50 µF}, draws: {typical: 3 W, peak: 5 W, start: 4 W}, boot: 40 s}
          dish: {kind: access point, power: {class: 4, signature: single, capacitance: 100 µF}, draws: {typical: 8 W, peak: 15 W, start: 12 W}, boot: 70 s}
          eye: {kind: camera, power: {class: 3, signature: single}, draws: {typical: 4 W, peak: 8 W, night: 7 W}, boot: 30 s}
          mute: {kind: phone, power: {class: 2, signature: single}, draws: {typical: 3 W, peak: 5 W}}
        batteries:
          block: {chemistry: lead, nominal: 12 V, capacity: 8 Ah, discharge: {280 W: 5 min, 100 W: 30 min, 60 W: 1 h, 16 W: 5 h}, life: 5 years}
          cell: {chemistry: lithium, nominal: 12.8 V, capacity: 10 Ah, discharge: {250 W: 28 min, 125 W: 1 h, 12 W: 10 h}, life: 10 years}
          plain: {chemistry: lead, nominal: 12 V, capacity: 8 Ah}
        standby:
          keeper: {apparent: 500 VA, real: 300 W, efficiency: 88 %, battery: block, blocks: 2, no load: 10 W, recharge: 40 W}
          light: {apparent: 500 VA, real: 300 W, efficiency: 88 %, battery: cell, blocks: 2}
          rough: {apparent: 500 VA, real: 300 W, efficiency: 88 %, battery: plain, blocks: 2}
          sheet: {apparent: 500 VA, real: 300 W, runtime: {60 W: 60 min, 150 W: 20 min, 300 W: 7 min}}
          riddle: {apparent: 500 VA, real: 300 W}
        """;

    private static readonly Lazy<Catalogue> All = new(() =>
    {
        var read = CatalogueFiles.Parse(Models, "own.yaml", CatalogueFiles.ReadShipped().Value!);
        Assert.True(read.Ok, string.Join('\n', read.Findings));
        return read.Value!;
    });

    /// <summary>What the jobs of a test differ in; as it stands: two phones, two access points, a camera, all on a battery, and the line's box too.</summary>
    internal sealed record Of
    {
        public string Outage { get; init; } = "{runtime: 20 min, keep: [phone], back within: 5 min}";

        public string Line { get; init; } = "lines: {line: {boxes: [router], boot: 90 s}}";

        public string Endpoints { get; init; } = "{phone-1: {model: handset}, phone-2: {model: handset}, ap-1: {model: dish}, ap-2: {model: dish}, cam-1: {model: eye}}";

        public string Patch { get; init; } = "{phone-1: sw-1/1, phone-2: sw-1/2, ap-1: sw-1/3, ap-2: sw-1/4, cam-1: sw-1/5}";

        public string Switch { get; init; } = "model: box, fed-by: ups-1, priority: {phone-1..phone-2: high}";

        public string Standby { get; init; } = "{model: keeper, in: closet, also: {router: 9 W}}";

        public string Closet { get; init; } = "{summer: 28 °C, winter: 12 °C}";

        public string Reserve { get; init; } = "{}";

        public Ledger Ledger => Study.Run(Job, All.Value, StudyRequest.Whole(Site.Today));

        public StandbyResult Outages => Study.Results(Job, All.Value, StudyRequest.Whole(Site.Today)).Standby;

        private Job Job
        {
            get
            {
                var text = $$$"""
                    headroom: 1
                    job: outage
                    policy: {outage: {{{Outage}}}, reserve: {{{Reserve}}}}
                    survey:
                      spaces: {closet: {temperature: {{{Closet}}}}}
                      {{{Line}}}
                      endpoints: {{{Endpoints}}}
                    designs:
                      d:
                        switches: {sw-1: {{{{Switch}}}}}
                        standby: {ups-1: {{{Standby}}}}
                        uplinks: [{from: sw-1/13, to: line, media: copper}]
                        patch: {{{Patch}}}
                    """;
                var job = JobFile.Parse(text, "job.yaml", All.Value);
                Assert.True(job.Ok, string.Join('\n', job.Findings) + "\n" + text);
                return job.Value!;
            }
        }

        public LedgerEntry Entry(string id) => Ledger.Entries.SingleOrDefault(entry => entry.Id == $"standby/{id}")
            ?? throw new InvalidOperationException($"no entry standby/{id}; there are {string.Join(", ", Ledger.Entries.Select(entry => entry.Id))}");

        public bool Has(string id) => Ledger.Entries.Any(entry => entry.Id == $"standby/{id}");
    }
}

using Headroom.Domain.Catalogues;
using Headroom.Domain.Jobs;
using Headroom.Domain.Ledgers;
using Headroom.Engineering.Years;
using Headroom.JobFiles;

namespace Headroom.Engineering.Tests.Years;

/// <summary>A small office and what is said of its years; all of it is invented.</summary>
internal static class YearsJob
{
    public static readonly DateOnly Today = new(2026, 11, 25);

    private const string Own = """
        catalogue: 1
        switches:
          box:
            ports: {1..8: {speed: 1 Gb/s, media: copper, power: at}, 9..10: {speed: 1 Gb/s, media: copper, power: none}}
            supplies: {inside: {ports together: 40 W, port volts: 54 V, rated: 80 W, efficiency: {50 %: 90 %}, power factor: 95 %}}
            base: 9 W
            ambient: 0..40 °C
            warranty: 3 years
            price: 100 EUR
            sound: {fans: 1, levels: {1: {power: 3.6 B, flow: 20 m3/h}}}
        endpoints:
          handset: {kind: phone, power: {class: 1, signature: single}, draws: {typical: 2 W, peak: 3 W}, price: 0 EUR}
          desk: {kind: other, power: none, draws: {typical: 20 W}, price: 0 EUR}
        batteries:
          block: {chemistry: lead, nominal: 12 V, capacity: 8 Ah, discharge: {280 W: 5 min, 100 W: 30 min, 60 W: 1 h, 16 W: 5 h}, life: 4 years, price: 0 EUR}
        standby:
          keeper: {apparent: 500 VA, real: 300 W, efficiency: 88 %, battery: block, blocks: 1, no load: 10 W, price: 0 EUR}
        """;

    public static Catalogue Models { get; } = Read();

    /// <summary>The office: two phones, a computer, a supply whose batteries are a year old.</summary>
    public static Job Of(string years, string more = "", string batteries = "batteries: 1 year", string endpoints = "{phone-1: {model: handset}, phone-2: {model: handset}, pc-1: {model: desk}}")
    {
        var read = JobFile.Parse($$$"""
            headroom: 1
            job: Small office
            policy: {outage: {runtime: 80 min}, reserve: {power: 0 %, ports: 0 %}{{{(years.Length == 0 ? "" : $", years: {{{years}}}")}}}}
            survey:
              spaces: {closet: {kind: cupboard, temperature: 20 °C}}
              endpoints: {{{endpoints}}}
            designs:
              d:
                switches: {sw-1: {model: box, in: closet, fed-by: ups-1}}
                standby: {ups-1: {model: keeper, in: closet, {{{batteries}}}}}
                patch: {phone-1: sw-1/1, phone-2: sw-1/2, pc-1: sw-1/9}
            {{{more}}}
            """, "job.yaml", Models);
        Assert.True(read.Ok, string.Join('\n', read.Findings));
        return read.Value!;
    }

    public static YearsResult Years(Job job, int until = 5) => YearsStudy.Of(job, Models, StudyRequest.Whole(Today), until);

    public static Ledger Study(Job job) => Headroom.Engineering.Study.Run(job, Models, StudyRequest.Whole(Today));

    private static Catalogue Read()
    {
        var read = CatalogueFiles.Parse(Own, "own.yaml", CatalogueFiles.ReadShipped().Value!);
        Assert.True(read.Ok, string.Join('\n', read.Findings));
        return read.Value!;
    }
}

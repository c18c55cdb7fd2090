using Headroom.Domain.Catalogues;
using Headroom.Domain.Ledgers;
using Headroom.Engineering.Tests.Studies;
using Headroom.JobFiles;

namespace Headroom.Engineering.Tests.Racking;

/// <summary>A small job about racks, offers and addresses, written as people write one; all figures are invented.</summary>
internal static class RackJob
{
    private const string Models = """
        catalogue: 1
        switches:
          box: {ports: {1..24: {speed: 1 Gb/s, media: copper, power: none}}, supplies: {inside: {rated: 50 W, efficiency: {100 %: 90 %}, input: ac}}, base: 18 W, size: 440 x 300 x 44 mm, units: 1 U, ears: fixed, weight: 4 kg, price: 200 EUR}
          desk: {ports: {1..8: {speed: 1 Gb/s, media: copper, power: none}}, supplies: {inside: {rated: 20 W, efficiency: {100 %: 90 %}, input: ac}}, base: 9 W, size: 210 x 120 x 30 mm, ears: none, weight: 500 g, feet: 2 mm, price: 60 EUR}
          blank: {ports: {1..8: {speed: 1 Gb/s, media: copper, power: none}}, supplies: {inside: {rated: 20 W, input: ac}}, units: 1 U, ears: fixed}
        standby:
          block: {apparent: 900 VA, real: 500 W, battery: cell, blocks: 2, outlets: 2, size: 440 x 420 x 88 mm, units: 2 U, ears: fixed, weight: 21 kg, price: 300 EUR}
        batteries:
          cell: {chemistry: lead, nominal: 12 V, life: 4 years, price: 25 EUR}
        endpoints:
          handset: {kind: phone, power: none, draws: {typical: 3 W}, price: 40 EUR}
          eye: {kind: camera, power: none, draws: {typical: 3 W}, price: 90 EUR}
          till: {kind: other, power: none, draws: {typical: 3 W}, price: 900 EUR}
        cables:
          plain: {category: 6, conductor: 24 AWG, screened: no, diameter: 6 mm, price per metre: 0.5 EUR}
        """;

    private static readonly Lazy<Catalogue> All = new(() =>
    {
        var read = CatalogueFiles.Parse(Models, "own.yaml", CatalogueFiles.ReadShipped().Value!);
        Assert.True(read.Ok, string.Join('\n', read.Findings));
        return read.Value!;
    });

    /// <summary>Studies a job.</summary>
    /// <param name="survey">Lines of the survey beside two spaces.</param>
    /// <param name="design">Keys of the design.</param>
    /// <param name="rest">Whole sections, such as money.</param>
    /// <param name="policy">The house rules.</param>
    public static Ledger Study(string survey, string design, string rest = "", string policy = "{}")
    {
        var text = $"headroom: 1\njob: racks\npolicy: {policy}\nsurvey:\n  spaces: {{closet: {{}}, room: {{}}}}\n{Indent(survey)}\ndesigns: {{d: {{{design}}}}}\n{rest}\n";
        var job = JobFile.Parse(text, "job.yaml", All.Value);
        Assert.True(job.Ok, string.Join('\n', job.Findings) + "\n" + text);
        return Engineering.Study.Run(job.Value!, All.Value, StudyRequest.Whole(Site.Today));
    }

    /// <summary>A rack that is wrong in every way that is warned of.</summary>
    public static Ledger Dangerous() => Study(
        "racks: {A: {in: closet, height: 9 U, depth: 400 mm, load: 60 kg, outlets: 1, fixed: nothing}, B: {in: closet, height: 6 U, depth: 500 mm, load: 30 kg, fixed: wall, fixing load: 20 kg}}",
        "switches: {sw-1: {model: box, in: A}, sw-2: {model: box, in: B}}, standby: {ups-1: {model: block, in: A}}");

    /// <summary>One entry of a job.</summary>
    public static LedgerEntry At(this Ledger ledger, string id) => ledger.Entries.SingleOrDefault(entry => entry.Id == id)
        ?? throw new InvalidOperationException($"no entry {id}; there are {string.Join(", ", ledger.Entries.Select(entry => entry.Id))}");

    private static string Indent(string text) => string.Join('\n', text.Split('\n').Select(line => "  " + line));
}

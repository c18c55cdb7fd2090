using Headroom.Domain.Catalogues;
using Headroom.Domain.Ledgers;
using Headroom.Engineering.Tests.Studies;
using Headroom.JobFiles;

namespace Headroom.Engineering.Tests.Cabling;

/// <summary>A small job about cables, written as people write one; all figures are invented.</summary>
internal static class CableJob
{
    private const string Models = """
        catalogue: 1
        cables:
          plain: {category: 6, conductor: 24 AWG, screened: no, diameter: 6.1 mm, most temperature: 60 °C}
          stout: {category: 6, conductor: 23 AWG, screened: no, diameter: 6.3 mm, most temperature: 60 °C}
          foil: {category: 6A, conductor: 23 AWG, screened: yes, diameter: 7.5 mm, most temperature: 75 °C}
          clad: {category: 5e, conductor: 24 AWG, conductivity: 63 %, copper-clad: yes, screened: no, diameter: 5.2 mm}
          lean: {category: 5e, conductor: 26 AWG, screened: no, diameter: 5 mm}
          bare: {conductor: 24 AWG}
          blank: {}
          patch-24: {category: 6, conductor: 24 AWG, screened: no, stranded: yes, diameter: 5.8 mm}
          patch-26: {category: 6, conductor: 26 AWG, screened: no, stranded: yes, diameter: 5.4 mm}
          patch-28: {category: 6, conductor: 28 AWG, screened: no, stranded: yes, diameter: 3.7 mm}
          hair: {category: 6, conductor: 30 AWG, screened: no, stranded: yes}
        fibres:
          glass-3: {category: OM3, diameter: 6 mm, loss: {850 nm: 3.0 dB, 1300 nm: 1.5 dB}}
          glass-4: {category: OM4, diameter: 6 mm, loss: {850 nm: 3.0 dB, 1300 nm: 1.5 dB}}
          glass-s: {category: OS2, diameter: 6 mm, loss: {1310 nm: 0.4 dB}}
        modules:
          ten: {speed: 10 Gb/s, media: multimode, port type: 10GBASE-SR, connector: LC, wavelength: 850 nm, reach: {OM3: 300 m, OM4: 400 m}, loss budget: 1.6 dB}
          bare-ten: {speed: 10 Gb/s, media: multimode, wavelength: 850 nm, reach: {OM4: 400 m}, loss budget: 1.9 dB}
          short: {speed: 10 Gb/s, media: copper, reach: {copper: 28 m}}
          dark: {speed: 10 Gb/s, media: multimode, wavelength: 850 nm}
        switches:
          box:
            ports:
              1..24: {speed: 1 Gb/s, media: copper, power: type 4}
              25..28: {speed: [1 Gb/s, 10 Gb/s], media: pluggable, power: none}
            supplies: {inside: {ports together: 2000 W, port volts: 52 V, rated: 2400 W}}
            base: 20 W
        endpoints:
          lamp: {kind: other, power: {class: 8, signature: single}, draws: {typical: 70 W, peak: 71 W}}
          handset: {kind: phone, power: {class: 2, signature: single}, draws: {typical: 3 W, peak: 5 W}}
        """;

    private static readonly Lazy<Catalogue> All = new(() =>
    {
        var read = CatalogueFiles.Parse(Models, "own.yaml", CatalogueFiles.ReadShipped().Value!);
        Assert.True(read.Ok, string.Join('\n', read.Findings));
        return read.Value!;
    });

    /// <summary>Studies a job of drops in a place of 20 °C.</summary>
    /// <param name="drops">The lines below 'drops', such as <c>K-1: {length: 40 m, cable: plain}</c>.</param>
    /// <param name="more">Lines of the survey beside the drops, such as pathways.</param>
    /// <param name="rest">Whole sections, such as designs or readings; an empty design when there are none.</param>
    /// <param name="policy">The reserves.</param>
    public static Ledger Study(string drops, string more = "", string rest = "designs: {d: {switches: {sw-1: {model: box}}}}", string policy = "{}")
    {
        var text = $$$"""
            headroom: 1
            job: cables
            policy: {{{policy}}}
            survey:
              spaces: {closet: {temperature: 20 °C}, room: {temperature: 20 °C}, hot: {temperature: 45 °C}}
              drops:
            {{{Indent(drops, 4)}}}
            {{{Indent(more, 2)}}}
            {{{rest}}}
            """;
        var job = JobFile.Parse(text, "job.yaml", All.Value);
        Assert.True(job.Ok, string.Join('\n', job.Findings) + "\n" + text);
        return Engineering.Study.Run(job.Value!, All.Value, StudyRequest.Whole(Site.Today));
    }

    /// <summary>One entry of a job.</summary>
    public static LedgerEntry Entry(this Ledger ledger, string id) => ledger.Entries.SingleOrDefault(entry => entry.Id == $"cabling/{id}")
        ?? throw new InvalidOperationException($"no entry cabling/{id}; there are {string.Join(", ", ledger.Entries.Select(entry => entry.Id))}");

    /// <summary>True when a job has an entry.</summary>
    public static bool Has(this Ledger ledger, string id) => ledger.Entries.Any(entry => entry.Id == $"cabling/{id}");

    /// <summary>Where an entry of a kind of input turns.</summary>
    public static Holds Turn(this LedgerEntry entry, string input) => entry.Story.Holds(entry).Single(row => row.Input.StartsWith(input, StringComparison.Ordinal));

    private static string Indent(string text, int by) => string.Join('\n', text.Split('\n').Select(line => new string(' ', by) + line));
}

using Headroom.Domain.Catalogues;
using Headroom.Domain.Jobs;
using Headroom.Engineering.Remedies;
using Headroom.Engineering.Tests.Studies;
using Headroom.JobFiles;

namespace Headroom.Engineering.Tests.Remedies;

/// <summary>Small jobs for tests of remedies, written as people write them; all figures are invented.</summary>
internal static class RemedySite
{
    private const string Models = """
        catalogue: 1
        switches:
          meek: {ports: {1..8: {speed: 1 Gb/s, media: copper, power: at}}, supplies: {in: {ports together: 40 W, port volts: 54 V, rated: 60 W, efficiency: {50 %: 90 %}, input: ac}}, base: 5 W, boot: 60 s, reserves-by: class, offers: [class], price: 40 EUR}
          choosy: {like: meek, offers: [class, measured]}
          limited: {like: meek, offers: [class, port-limit]}
          mixed: {like: meek, ports: {1..4: {speed: 1 Gb/s, media: copper, power: at}, 5..8: {speed: 1 Gb/s, media: copper, power: type 3}}, supplies: {in: {ports together: 140 W, port volts: 54 V, rated: 190 W, efficiency: {50 %: 90 %}, input: ac}}}
          twofold: {like: meek, supplies: {small: {ports together: 40 W, port volts: 54 V, rated: 60 W, efficiency: {50 %: 90 %}, input: ac}, large: {ports together: 90 W, port volts: 54 V, rated: 120 W, efficiency: {50 %: 90 %}, input: ac, price: 21 EUR}}}
          roomy: {like: meek, supplies: {in: {ports together: 140 W, port volts: 54 V, rated: 190 W, efficiency: {50 %: 90 %}, input: ac}}, price: 90 EUR}
          tiny: {like: roomy, ports: {1: {speed: 1 Gb/s, media: copper, power: at}}, price: 20 EUR}
          loud: {like: meek, sound: {fans: 1, levels: {1: {power: 3.0 B}, 2: {power: 5.2 B}}}}
          steady: {like: meek, sound: {fans: 1, levels: {1: {power: 4.6 B}}}}
          roar: {like: meek, sound: {fans: 1, levels: {1: {power: 7.6 B}}}}
          hot: {like: meek, base: 40 W, ambient: 0..45 °C, sound: {fans: 2, levels: {1: {power: 4.4 B, from: 0 °C, flow: 20 m3/h}}}, fan: maker}
          warm: {like: meek, base: 40 W, ambient: 0..45 °C}
          lit: {like: meek, ports: {1..8: {speed: 1 Gb/s, media: copper, power: none}, 9..10: {speed: [1 Gb/s, 10 Gb/s], media: pluggable, power: none}}, supplies: {in: {}}}
          racked: {like: lit, size: 440 x 300 x 44 mm, units: 1 U, ears: fixed, weight: 4 kg}
        fans:
          maker: {rated: 12 V, start: 4 V, current: 100 mA, speed: 8000 rpm, curve: {0 m3/h: 80 Pa, 5 m3/h: 60 Pa, 10 m3/h: 36 Pa, 17 m3/h: 0 Pa}, power: 4.1 B, holes: 32 mm, wires: 3, tachometer: yes, size: 40 x 20 x 40 mm, price: 9 EUR}
          weak: {like: maker, speed: 5000 rpm, curve: {0 m3/h: 20 Pa, 5 m3/h: 10 Pa, 9 m3/h: 0 Pa}, power: 2.9 B}
        modules:
          near: {speed: 1 Gb/s, media: multimode, wavelength: 850 nm, reach: {OM4: 300 m}, loss budget: 2.6 dB}
          far: {speed: 1 Gb/s, media: multimode, wavelength: 850 nm, reach: {OM4: 900 m}, loss budget: 6 dB}
        endpoints:
          dish: {kind: access point, power: {class: 4, signature: single, capacitance: 100 µF}, draws: {typical: 4 W, peak: 6 W, start: 5 W}, boot: 30 s, speed: 1 Gb/s, traffic: {users: 4, active: 50 %, down: 5 Mb/s, up: 1 Mb/s}, price: 50 EUR}
          big-dish: {like: dish, power: {class: 5, signature: single}, draws: {typical: 14 W, peak: 31 W, start: 20 W}}
          small-dish: {like: dish, power: {class: 2, signature: single, capacitance: 100 µF}, draws: {typical: 3 W, peak: 4 W, start: 4 W}, price: 45 EUR}
          handset: {like: dish, kind: phone, traffic: {call share: 10 %}}
          cam: {kind: camera, power: none, draws: {typical: 3 W}, speed: 100 Mb/s, traffic: {stream: 4 Mb/s}}
          box: {kind: other, power: none, draws: {typical: 3 W}, speed: 1 Gb/s}
          far-radio: {kind: radio, power: {passive: 20..56 V, least volts: 20 V}, draws: {typical: 9 W, peak: 10 W, start: 10 W}}
        injectors:
          v24: {ports: 1, passive: {volts: 24 V, current: 1 A, pairs: 2, always on: yes}, supply: {ports together: 22 W, port volts: 24 V, input: ac}, price: 13 EUR}
          v48: {ports: 1, passive: {volts: 48 V, current: 0.6 A, pairs: 2, always on: yes}, supply: {ports together: 27 W, port volts: 48 V, input: ac}, price: 24 EUR}
        batteries:
          block: {chemistry: lead, nominal: 12 V, capacity: 8 Ah, discharge: {280 W: 5 min, 100 W: 30 min, 60 W: 1 h, 16 W: 5 h}, life: 5 years, price: 30 EUR}
        standby:
          keeper: {apparent: 500 VA, real: 300 W, efficiency: 88 %, battery: block, blocks: 2, no load: 10 W, recharge: 40 W, price: 200 EUR}
          holder: {like: keeper, blocks: 4, price: 400 EUR}
        """;

    private static readonly Lazy<Catalogue> Own = new(() =>
    {
        var read = CatalogueFiles.Parse(Models, "own.yaml", CatalogueFiles.ReadShipped().Value!);
        Assert.True(read.Ok, string.Join('\n', read.Findings));
        return read.Value!;
    });

    public static Catalogue Catalogue => Own.Value;

    public static StudyRequest Request => new(null, Site.Today, [], null);

    public static Job Job(string yaml)
    {
        var read = JobFile.Parse("headroom: 1\njob: made up\n" + yaml, "job.yaml", Catalogue);
        Assert.True(read.Ok, string.Join('\n', read.Findings));
        return read.Value!;
    }

    /// <summary>The remedies of some kinds; of all when none is named.</summary>
    public static RemedyResult Find(string yaml, params string[] kinds) => RemedySearch.Find(Job(yaml), Catalogue, new(Request, []) { Kinds = kinds });
}

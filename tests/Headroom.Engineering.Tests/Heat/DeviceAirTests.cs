using Headroom.Domain.Ledgers;
using Headroom.Engineering.Tests.Studies;
using Headroom.JobFiles;

namespace Headroom.Engineering.Tests.Heat;

/// <summary>Devices in lofts and yards against the air they are rated for; everything is invented.</summary>
public sealed class DeviceAirTests
{
    private const string Models = """
        catalogue: 1
        endpoints:
          eye: {kind: camera, power: {class: 3, signature: single}, draws: {typical: 4 W, peak: 8 W}, ambient: -20..50 °C}
          bare: {like: eye, ambient: unknown}
        """;

    private static readonly Headroom.Domain.Catalogues.Catalogue Own = CatalogueFiles.Parse(Models, "own.yaml", CatalogueFiles.ReadShipped().Value!).Value!;

    private static Ledger Study(string space, string model = "eye", string more = "")
    {
        var read = JobFile.Parse($$$"""
            headroom: 1
            job: made up
            policy: {reserve: {temperature: 5 K}}
            survey:
              {{{more}}}
              spaces: {there: {{{space}}}, closet: {kind: cupboard}}
              endpoints: {cam-1: {model: {{{model}}}, near: there}}
            designs: {only: {switches: {sw-1: {model: wren-b} } } }
            """, "job.yaml", Own);
        Assert.True(read.Ok, string.Join('\n', read.Findings));
        return Engineering.Study.Run(read.Value!, Own, new StudyRequest(null, Site.Today, [], ["heat"]));
    }

    private static LedgerEntry? Air(Ledger ledger, string quantity = "air") => ledger.Entries.SingleOrDefault(entry => entry.Id == $"heat/cam-1/{quantity}");

    [Theory]
    [InlineData("{kind: loft, temperature: {summer: 44 °C}}", Verdict.Clear)]
    [InlineData("{kind: loft, temperature: {summer: 46 °C}}", Verdict.Tight)]
    [InlineData("{kind: loft, temperature: {summer: 51 °C}}", Verdict.Short)]
    [InlineData("{kind: loft}", Verdict.Unknown)]
    public void A_loft_is_held_against_the_rating_with_the_reserve(string space, Verdict verdict) => Assert.Equal(verdict, Air(Study(space))!.Studied);

    [Theory]
    [InlineData(-14, Verdict.Clear)]
    [InlineData(-16, Verdict.Tight)]
    [InlineData(-21, Verdict.Short)]
    public void A_cold_yard_is_held_against_the_lower_end(int winter, Verdict verdict)
    {
        var ledger = Study($"{{kind: outdoors, temperature: {{winter: {winter} °C, summer: 30 °C}}}}");
        Assert.Equal(verdict, Air(ledger, "cold")!.Studied);
        Assert.Equal(winter + 20, Air(ledger, "cold")!.Left!.Value, 1e-9);
        Assert.Equal(Verdict.Clear, Air(ledger)!.Studied);
    }

    [Fact]
    public void A_rating_that_nobody_knows_is_asked_for_once_and_is_not_taken_as_none()
    {
        var ledger = Study("{kind: outdoors, temperature: {winter: -9 °C, summer: 30 °C}}", "bare");
        var asked = ledger.Entries.Where(entry => entry.Subject == "cam-1").ToList();
        Assert.Equal([Verdict.Unknown, Verdict.Unknown], asked.Select(entry => entry.Studied));
        Assert.Equal(["from how cold to how warm an air is bare rated? its data sheet says"], asked.Select(entry => entry.Question).Distinct());
    }

    [Theory]
    [InlineData("{kind: private office}")]
    [InlineData("{kind: private office, temperature: {summer: 28 °C}}")]
    public void An_ordinary_room_gives_no_reason_to_ask(string space) => Assert.Null(Air(Study(space, "bare")));

    [Fact]
    public void A_hot_office_does() => Assert.Equal(Verdict.Clear, Air(Study("{kind: private office, temperature: {summer: 31 °C}}"))!.Studied);

    // 900 m take nothing; 2100 m are 1200 m above it: 4 K.
    [Fact]
    public void Thin_air_takes_a_kelvin_for_each_three_hundred_metres() =>
        Assert.Equal(46, Air(Study("{kind: loft, temperature: {summer: 30 °C}}", more: "altitude: 2100 m"))!.Limit!.Value, 1e-9);
}

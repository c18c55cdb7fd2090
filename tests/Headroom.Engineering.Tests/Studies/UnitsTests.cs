using Headroom.Domain.Ledgers;
using Headroom.JobFiles;

namespace Headroom.Engineering.Tests.Studies;

/// <summary>The same site written in feet, AWG and Fahrenheit or in metres, mm² and Celsius gives the same ledger. All figures are invented.</summary>
public sealed class UnitsTests
{
    private const string Metric = """
        headroom: 1
        job: both
        survey:
          spaces: {closet: {}, yard: {}}
          drops: {K-1: {from: closet, to: yard, length: 91.44 m, cable: mm-cable, ambient: 45 °C, panel cord: 3.048 m of mm-cable, device cord: 3.048 m of mm-cable}}
          endpoints: {r: {model: rook, drop: K-1}}
        designs: {d: {injectors: {i: {model: moth, in: closet}}, patch: {K-1: i}}}
        """;

    private const string Models = """
        catalogue: 1
        cables:
          mm-cable: {conductor: 0.20473031 mm2}
          awg-cable: {conductor: 24 AWG}
        """;

    [Fact]
    public void Feet_gauge_and_Fahrenheit_give_the_verdicts_of_metres_square_millimetres_and_Celsius()
    {
        var imperial = Metric.Replace("91.44 m", "300 ft", StringComparison.Ordinal).Replace("3.048 m", "10 ft", StringComparison.Ordinal)
            .Replace("mm-cable", "awg-cable", StringComparison.Ordinal).Replace("45 °C", "113 F", StringComparison.Ordinal);
        var (left, right) = (Study(Metric), Study(imperial));
        Assert.Equal(left.Entries.Select(e => (e.Id, e.Studied)), right.Entries.Select(e => (e.Id, e.Studied)));
        Assert.All(left.Entries.Zip(right.Entries), pair => Assert.Equal(pair.First.Left ?? 0, pair.Second.Left ?? 0, 1e-4));
        Assert.Contains(left.Entries, entry => entry is { Quantity: "volts", Limit: not null });
    }

    private static Ledger Study(string text)
    {
        var catalogue = CatalogueFiles.Parse(Models, "own.yaml", CatalogueFiles.ReadShipped().Value!).Value!;
        var job = JobFile.Parse(text, "job.yaml", catalogue);
        Assert.True(job.Ok, string.Join('\n', job.Findings));
        return Engineering.Study.Run(job.Value!, catalogue, StudyRequest.Whole(Site.Today));
    }
}

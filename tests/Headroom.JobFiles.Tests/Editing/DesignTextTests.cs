using Headroom.Domain.Catalogues;
using Headroom.Domain.Jobs;
using Headroom.JobFiles.Editing;
using Headroom.JobFiles.Yaml;

namespace Headroom.JobFiles.Tests.Editing;

/// <summary>A design that is written reads back as what it was.</summary>
public sealed class DesignTextTests
{
    private static readonly Catalogue Models = CatalogueFiles.ReadShipped().Value!;

    public static TheoryData<string> Designs =>
    [
        "switches: {sw-1: {model: redshank, supply: large}}",
        "switches: {sw-1: {in: closet, at: 1 m x 0.5 m x 0.2 m, fed-by: ups-1, level: 2, fan: puff, reserves-by: port-limit, at-start: draw, at-refusal: stop, retries: yes, shed-order: lowest-port-first, negotiated-counts: device, port-limit: {1..3: 15.4 W, 5: 7 W}, priority: {3: critical, ap-1: high}, passive: [9, 10]}}",
        "injectors: {feed: {model: hawkmoth, in: A, unit: 3, on: sw-1, from: sw-1/9..16}}",
        "standby: {ups-1: {model: holm, batteries: 3 years, runtime: 20 min, also: {router: 11 W, line-box: 6 W}, sheds: {low: 5 min, high: 25 min}}}",
        "uplinks: [{from: sw-1/25, to: line, media: fibre, module: limpet, far module: limpet, drop: K-3}]",
        "patch: {K-1: sw-1/9, K-2: feed, \"yes\": sw-1/1}",
        "building: {drops: {K-1: {cable: cat6a-23, panel cord: {length: 1 m, cable: cord-26}}, K-2: {pieces: [{length: 12.5 m, ambient: 31 °C, bundle: 12, by: loft}, {length: 40 ft, cable: cat6-23}], mated pairs: 3}}}",
        "building: {pathways: {loft: {inside: 35.1 mm, area: 90 cm2, barrier: steel, apart: 120 mm, ambient: 28 °C}}, spaces: {closet: {vents: 240 cm2, vents apart: 1.5 m, reduction: 30 dB}}}",
        "building: {partitions: {wall: {door reduction: 32 dB, gap: 10 cm2}}, racks: {A: {cabinet: alcove, height: 9 U, depth: 436 mm, load: 47 kg, blanked: yes}}}",
        "building: {lines: {line: {down: 500 Mb/s, up: 100 Mb/s}}, endpoints: {ap-1: {traffic: {stream: 4 Mb/s, call share: 10 %, users: 3, active: 10 %, down: 8 Mb/s, up: 2 Mb/s}}}}",
    ];

    [Theory, MemberData(nameof(Designs))]
    public void It_reads_back_as_it_was(string keys)
    {
        var written = $"{{like: a, {keys}}}";
        var text = DesignText.Of(Read(written));
        Assert.Equal(Flow(written), Flow(text));
        Assert.Equal(text, DesignText.Of(Read("{like: a}", text)));
    }

    [Fact]
    public void What_it_cannot_write_it_refuses() => Assert.Throws<ArgumentException>(() => DesignText.Of(Read("{like: a, patch: {K-1: none}}")));

    [Fact]
    public void A_design_that_changes_the_building_is_completed_thing_by_thing()
    {
        var job = Job("""
              a: {building: {drops: {K-1: {cable: cat6-23, panel cord: 1 m of cord-26}}}}
              b: {like: a, building: {drops: {K-1: {cable: cat6a-23}, K-2: {mated pairs: 2}}}}
            """);
        var whole = DesignLineage.Whole(job, "b")!.Building!;
        Assert.Equal(("cat6a-23", "cord-26"), (whole.Drops[0].Cable, whole.Drops[0].CordAtPanel!.Cable));
        var survey = whole.In(job.Survey);
        Assert.Equal(["cat6a-23", "cat5e-24"], survey.Drops.Take(2).Select(drop => drop.Pieces[0].Cable));
        Assert.Equal((false, true), (survey.Drops[0].Existing, survey.Drops[1].Existing));
        Assert.Equal(31, survey.Drops[0].Pieces[0].Length!.Value.Value);
    }

    private static string Flow(string yaml) => YamlWriter.Flow(YamlText.Parse(yaml, "design").Value!);

    private static Design Read(string flow, string? block = null)
    {
        var text = block is null ? $"  b: {flow}\n" : "  b:\n" + string.Concat(block.Split('\n').Select(line => $"    {line}\n"));
        return Job($"  a: {{}}\n{text}").Designs[1];
    }

    // Without models, so that only the reading is tried: what names must exist is for the rules.
    private static Job Job(string designs)
    {
        var read = JobFile.Parse($"headroom: 1\njob: x\nsurvey: {{spaces: {{closet: {{kind: cupboard}}}}, drops: {{K-1..K-2: {{from: closet, length: 31 m, cable: cat5e-24, existing: yes}}}}}}\ndesigns:\n{designs}\n", "job.yaml", null);
        Assert.True(read.Ok, string.Join('\n', read.Findings));
        return read.Value!;
    }

    [Fact]
    public void A_design_put_into_a_job_leaves_everything_else_byte_for_byte()
    {
        var folder = Directory.CreateTempSubdirectory("design").FullName;
        try
        {
            var file = Path.Combine(folder, "job.yaml");
            File.Copy(Repository.PathOf("examples/barn-vets/job.yaml"), file);
            var design = Read("{like: as-offered, building: {drops: {K-17: {cable: yard-23}}}}") with { Id = "thicker" };
            var recorded = JobRecord.AddDesign(file, design, Models);
            Assert.DoesNotContain(recorded.Findings, finding => finding.Severity == Domain.Findings.Severity.Error);
            var at = recorded.Text!.IndexOf("  thicker:", StringComparison.Ordinal);
            var added = recorded.Text.Length - recorded.Before!.Length;
            Assert.Equal(recorded.Before, recorded.Text.Remove(at, added));
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    [Theory]
    [InlineData("drops: {K-99: {cable: yard-23}}", "RUL088")]
    [InlineData("drops: {K-17: {cable: yard-99}}", "RUL014")]
    [InlineData("drops: {K-17: {pieces: [{length: 3 m, by: nowhere}]}}", "RUL013")]
    [InlineData("racks: {A: {cabinet: closett}}", "RUL029")]
    [InlineData("pathways: {loft-pip: {inside: 35 mm}}", "RUL088")]
    [InlineData("spaces: {cuboard: {vents: 90 cm2}}", "RUL088")]
    [InlineData("partitions: {wall: {gap: 1 cm2}}", "RUL088")]
    [InlineData("lines: {lin: {up: 90 Mb/s}}", "RUL088")]
    [InlineData("endpoints: {cam-9: {traffic: {stream: 4 Mb/s}}}", "RUL088")]
    public void What_a_design_changes_must_be_there(string building, string code)
    {
        var folder = Directory.CreateTempSubdirectory("design").FullName;
        try
        {
            var file = Path.Combine(folder, "job.yaml");
            File.Copy(Repository.PathOf("examples/barn-vets/job.yaml"), file);
            var recorded = JobRecord.AddDesign(file, Read($"{{like: as-offered, building: {{{building}}}}}") with { Id = "wrong" }, Models);
            Assert.Null(recorded.Text);
            Assert.Contains(recorded.Findings, finding => finding.Code == code);
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }
}

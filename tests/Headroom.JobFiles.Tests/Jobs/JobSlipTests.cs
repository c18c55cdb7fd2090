using Headroom.Domain.Catalogues;
using Headroom.Domain.Findings;
using Headroom.Domain.Jobs;

namespace Headroom.JobFiles.Tests.Jobs;

/// <summary>One slip a row, with the place and code it is found at. The job around it is invented.</summary>
public sealed class JobSlipTests
{
    private static readonly Catalogue Shipped = CatalogueFiles.ReadShipped().Value!;

    public static TheoryData<string, string> Slips => new()
    {
        { "headroom: 1\njob: x\nsurvey:\n  drops:\n    K-1: {from: a, length: 90}\n  spaces: {a: {}}\n", "job.yaml:5:28: error JOB006" },
        { "headroom: 1\njob: x\nsurvey:\n  drops:\n    K-1: {from: a, length: '12,5 m'}\n  spaces: {a: {}}\n", "job.yaml:5:28: error JOB008" },
        { "headroom: 1\njob: x\nsurvey:\n  drops:\n    K-1: {from: a, length: 12,5 m}\n  spaces: {a: {}}\n", "job.yaml:5:31: error JOB008" },
        { "headroom: 1\njob: x\nsurvey:\n  drops:\n    K-1: {from: a, length: -12 m}\n  spaces: {a: {}}\n", "job.yaml:5:28: error JOB010" },
        { "headroom: 1\njob: x\nsurvey:\n  drops:\n    K-1: {from: a, length: 12 W}\n  spaces: {a: {}}\n", "job.yaml:5:28: error JOB007" },
        { "headroom: 1\njob: x\nsurvey:\n  drops:\n    K-1: {from: a, lenght: 12 m}\n  spaces: {a: {}}\n", "job.yaml:5:20: error JOB001" },
        { "headroom: 1\njob: x\nsurvey:\n  spaces: {a: {kind: kichen}}\n", "job.yaml:4:22: error JOB011" },
        { "headroom: 1\njob: x\nsurvey:\n  spaces: [a]\n", "job.yaml:4:11: error JOB004" },
        { "job: x\n", "job.yaml:1:1: error JOB003" },
        { "headroom: 7\njob: x\n", "job.yaml:1:11: error JOB014" },
        { "headroom: 1\njob: x\nsurvey:\n  endpoints: {e: {model: pipitt}}\n", "error RUL015" },
        { "headroom: 1\njob: x\ndesigns: {d: {like: e}}\n", "error RUL" },
        { "headroom: 1\njob: x\nsurvey: {endpoints: {e: pipit, f: pipit}}\ndesigns: {d: {switches: {s: {model: alder}}, patch: {e: s/1, f: s/1}}}\n", "error RUL" },
        { "headroom: 1\njob: x\nsurvey: {spaces: {a: {size: 3 x 3 x 2.5 m}}, listeners: {l: {in: a, at: 5 x 1 x 1 m, limit: 40 dB(A)}}}\n", "error RUL" },
        { "headroom: 1\njob: x\nsurvey: {spaces: {a: {}}, noises: {n: {in: a, power: 40 dB, bands: {63: 38 dB, 125: 40 dB}}}}\n", "error JOB019" },
        { "headroom: 1\njob: x\nsurvey: {spaces: {a: {}}, noises: {n: {in: a, pressure: 40 dB(A)}}}\n", "error JOB003" },
        { "headroom: 1\njob: x\nsurvey: {spaces: {a: {}}, noises: {n: {in: a, power: 4.0}}}\n", "error JOB006" },
        { "headroom: 1\njob: x\nsurvey: {spaces: {a: {}}, partitions: {w: {between: [a]}}}\n", "error JOB009" },
        { "headroom: 1\njob: x\nsurvey: {spaces: {a: {size: 3 x 3 x 2.5 m}}, listeners: {l: {in: a, at: 0 x 1 x 1 m}}}\n", "error RUL066" },
        { "headroom: 1\njob: x\nsurvey:\n  spaces: {a: {}}\n  drops: {K-1: {from: a, length: 112 m, cable: cat6-23}}\n", "question RUL" },
    };

    [Theory, MemberData(nameof(Slips))]
    public void A_slip_is_found_at_its_place_with_what_is_allowed_and_what_to_do(string text, string expected)
    {
        var loaded = JobFile.Parse(text, "job.yaml", Shipped);
        var finding = loaded.Findings.FirstOrDefault(f => f.ToString().Contains(expected, StringComparison.Ordinal));
        Assert.True(finding is not null, $"wanted {expected}, found:\n{string.Join('\n', loaded.Findings)}");
        Assert.All(new[] { finding.Given, finding.Allowed, finding.Advice }, part => Assert.NotEmpty(part));
        Assert.Equal(finding.Severity == Severity.Question, loaded.Ok);
    }

    [Fact]
    public void A_decimal_comma_between_braces_is_told_with_what_is_probably_meant()
    {
        var found = JobFile.Parse("headroom: 1\njob: x\nsurvey: {spaces: {a: {}}, drops: {K-1: {from: a, length: 12,5 m}, K-2: {from: a, 24 AWG}}}\n", "job.yaml", Shipped).Findings;
        Assert.Contains("write '12.5 m'", found.Single(finding => finding.Code == "JOB008").Advice, StringComparison.Ordinal);
        Assert.Contains("a key '24 AWG'", found.Single(finding => finding.Code == "JOB001").Given, StringComparison.Ordinal);
    }

    [Fact]
    public void A_near_name_is_asked_for()
    {
        var finding = Assert.Single(JobFile.Parse("headroom: 1\njob: x\nsurvey: {endpoints: {e: pipitt}}\n", "job.yaml", Shipped).Findings);
        Assert.Contains("pipit", finding.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void All_slips_come_in_one_go_in_order_of_place()
    {
        var found = JobFile.Parse("headroom: 1\njob: x\nsurvey:\n  spaces: {a: {kind: kichen, flor: 2}}\n  drops: {K-1: {from: a, length: 90}}\n", "job.yaml", Shipped).Findings;
        Assert.Equal(3, found.Count(f => f.Severity == Severity.Error));
        Assert.Equal(found.OrderBy(f => f.At.Line).ThenBy(f => f.At.Column).Select(f => f.Code), found.Select(f => f.Code));
    }

    [Fact]
    public void Ranges_and_counts_stand_for_one_thing_each()
    {
        var job = Good("""
            headroom: 1
            job: x
            survey:
              spaces: {a: {}}
              drops: {K-01..K-03: {from: a, length: 20 m, cable: cat6-23}}
              endpoints: {ap-1..ap-3: {model: bulrush, drop: K-01..K-03}, 2 x pipit: {near: a}}
            designs:
              d: {switches: {sw-1: {model: alder}}, patch: {K-01..K-03: sw-1/1..3, pipit-1..pipit-2: sw-1/4..5}}
            """);
        Assert.Equal(["K-01", "K-02", "K-03"], job.Survey.Drops.Select(d => d.Id));
        Assert.Equal(["ap-1", "ap-2", "ap-3", "pipit-1", "pipit-2"], job.Survey.Endpoints.Select(e => e.Id));
        Assert.Equal("K-02", job.Survey.Endpoints[1].Drop);
        Assert.Equal("sw-1/5", job.Designs[0].Patch[^1].To.ToString());
    }

    [Fact]
    public void A_value_keeps_its_writing_its_origin_and_its_place()
    {
        var length = Good("headroom: 1\njob: x\nsurvey:\n  spaces: {a: {}}\n  drops: {K-1: {from: a, length: 120 ft measured}}\n").Survey.Drops[0].Pieces[0].Length!;
        Assert.Equal(36.576, length.Value.Value, 1e-9);
        Assert.Equal((Domain.Quantities.Origin.Measured, "120 ft measured", 5), (length.Origin, length.Written, length.At.Line));
    }

    [Fact]
    public void What_is_absent_or_said_to_be_unknown_is_null()
    {
        var drops = Good("headroom: 1\njob: x\nsurvey:\n  spaces: {a: {}}\n  drops: {K-1: {from: a}, K-2: {from: a, length: unknown}}\n").Survey.Drops;
        Assert.All(drops, drop => Assert.Null(drop.Pieces[0].Length));
    }

    [Fact]
    public void Windows_line_ends_and_a_byte_order_mark_keep_places_right()
    {
        var finding = Assert.Single(JobFile.Parse("headroom: 1\r\njob: x\r\nsurvey:\r\n  spaces: {a: {kind: kichen}}\r\n", "job.yaml", Shipped).Findings);
        Assert.Equal(new Place("job.yaml", 4, 22), finding.At);
    }

    [Fact]
    public void Texts_of_any_kind_are_read_or_refused_and_never_throw() => Gen.OneOf(Gen.String, Gen.String[Gen.Char["headroom: 1\n job{}[]-#&*'\"|>%@,°"], 0, 200])
        .Sample(text => JobFile.Parse(text, "job.yaml", Shipped).Findings is not null, iter: Long.Samples(20_000));

    private static Job Good(string text)
    {
        var loaded = JobFile.Parse(text, "job.yaml", Shipped);
        Assert.DoesNotContain(loaded.Findings, f => f.Severity == Severity.Error);
        return loaded.Value!;
    }
}

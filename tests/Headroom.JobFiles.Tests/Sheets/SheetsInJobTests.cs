namespace Headroom.JobFiles.Tests.Sheets;

/// <summary>Sheets that a job names count as if their rows stood in it.</summary>
public sealed class SheetsInJobTests
{
    private const string Head = "headroom: 1\njob: x\n";
    private const string Survey = "survey: {spaces: {hall: {}, cupboard: {}}}\n";

    [Fact]
    public void Rows_of_sheets_join_the_survey_the_design_the_readings_and_the_prices()
    {
        using var folder = new SheetFolder(Head + """
            sheets:
              - {file: drops.csv, as: drops}
              - {file: lists/devices.csv, as: endpoints}
              - {file: patch.csv, as: patching}
              - {file: readings.csv, as: readings}
              - {file: prices.csv, as: prices}
            survey:
              spaces: {hall: {}, cupboard: {}}
              drops: {K-01: {from: cupboard, to: hall, length: 20 m, cable: cat6-23}}
            designs: {d: {switches: {sw-1: {model: alder}}, patch: {K-01: sw-1/1}}}
            """);
        folder.Put("drops.csv", "drop,from,room,length (m),cable\nK-02,cupboard,hall,31,cat6-23\n");
        folder.Put("lists/devices.csv", "device,model,drop\nphone-1,pipit,K-01\nphone-2,pipit,K-02\n");
        folder.Put("patch.csv", "drop,port\nK-02,sw-1/2\n");
        folder.Put("readings.csv", "place,value,date\nsw-1/2,2.9 W,2026-11-14\n");
        folder.Put("prices.csv", "item,cost (EUR)\nalder,212\n");
        var job = folder.Read();
        Assert.Equal("", folder.Findings());
        Assert.Equal(["K-01", "K-02"], job.Value!.Survey.Drops.Select(drop => drop.Id));
        Assert.Equal(["phone-1", "phone-2"], job.Value.Survey.Endpoints.Select(endpoint => endpoint.Id));
        Assert.Equal("sw-1/2", job.Value.Designs[0].Patch[1].To.ToString());
        Assert.Equal(2.9, Assert.Single(job.Value.Readings).Value);
        Assert.Equal(212, Assert.Single(job.Value.Prices).Cost.Value.Amount);
        Assert.EndsWith("drops.csv:2:20", job.Value.Survey.Drops[1].Pieces[0].Length!.At.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void A_thing_in_the_file_and_in_a_sheet_is_a_finding_that_names_both_places()
    {
        using var folder = new SheetFolder(("drops", "drop;room\n03;hall\n"));
        Assert.Equal("drops.csv:2:1: error JOB002: '03' a second time (first in job.yaml:5:11); each name once, ranges included; keep one of them, or shorten the range\n", folder.Findings());
    }

    [Fact]
    public void What_a_rule_finds_in_a_sheet_is_told_at_its_cell()
    {
        using var folder = new SheetFolder(("endpoints", "device;model;drop\nphone-1;pipitt;01\n"));
        Assert.StartsWith("endpoints.csv:2:1: error RUL015", folder.Findings(), StringComparison.Ordinal);
    }

    [Fact]
    public void Names_that_lead_nowhere_are_told_in_the_same_go_as_a_row_that_does_not_read()
    {
        using var folder = new SheetFolder(
            ("drops", "drop;room;length (m);cable\nK-01;hall;31;cat6-23\nK-02;hall;thirty;cat6-23\nK-03;halll;31;cat6-33\n"),
            ("endpoints", "device;model;drop\nphone-1;pipitt;K-01\nphone-2;pipit;K-02\nphone-3;pipit;K-09\n"));
        var codes = folder.Read().Findings.Select(finding => $"{finding.Code} {folder.Plain(finding.At.ToString())}").ToList();
        Assert.Contains("RUL015 endpoints.csv:2:1", codes); // no such model
        Assert.Contains("RUL012 endpoints.csv:4:1", codes); // no such drop
        Assert.Contains("RUL010 drops.csv:4:1", codes); // no such space
        Assert.Contains("RUL014 drops.csv:4:1", codes); // no such cable
        Assert.DoesNotContain("RUL012 endpoints.csv:3:1", codes); // K-02 is there, its row does not read
        Assert.Contains(codes, code => code.EndsWith("drops.csv:3:11", StringComparison.Ordinal));
    }

    [Fact]
    public void Beside_a_sheet_that_cannot_be_read_no_name_is_said_to_lead_nowhere()
    {
        using var folder = new SheetFolder(("drops", "drop;room\nK-01;hall\n"), ("endpoints", "device;model;drop\nphone-1;pipit;K-01\n"));
        File.Delete(folder.PathOf("drops.csv"));
        Assert.DoesNotContain("RUL", folder.Findings(), StringComparison.Ordinal);
    }

    [Fact]
    public void Beside_a_slip_in_the_job_itself_names_that_lead_nowhere_are_told_too()
    {
        using var folder = new SheetFolder(Head + """
            survey:
              spaces: {hall: {}, cupboard: {}}
              drops:
                K-01..K-04: {from: cupboard, to: hall, length: 20, cable: cat6-23}
                K-05: {from: cupboard, to: hall, length: 20 m, cable: cat6-33}
                K-06: [cupboard, hall]
              endpoints:
                a: {model: pipit, drop: K-03}
                b: {model: pipitt, drop: K-05}
                c: {model: pipit, drop: K-06}
                d: {model: pipit, drop: K-07}
                3 x pipit: {near: {x: 1}}
            designs: {d: {switches: {sw-1: {model: alder}}, patch: {K-01: sw-1/1, pipit-2: sw-1/2, K-77: sw-2/1}}}
            """);
        var codes = folder.Read().Findings.Where(finding => finding.Code.StartsWith("RUL", StringComparison.Ordinal)).Select(finding => finding.Code + " " + finding.Given).ToList();
        Assert.Equal(
            [
                "RUL014 drop K-05 names the cable model 'cat6-33'",
                "RUL015 endpoint b names the endpoint model 'pipitt'",
                "RUL012 endpoint d names the drop 'K-07'",
                "RUL021 the patch to sw-2/1 names the drop or endpoint 'K-77'",
                "RUL022 K-77 names the unit with ports 'sw-2'",
            ],
            codes);
    }

    [Fact]
    public void Bounds_and_wording_are_those_of_the_job_file()
    {
        using var folder = new SheetFolder(("drops", "drop;room;length (m);cable\nK-01;hall;3000;cat6-23\nK 0 /1;hall;31;cat6-23\n"));
        Assert.Equal(
            """
            drops.csv:2:11: error JOB010: length of drop K-01 is '3000 m'; a length between 0.1 and 2000 m; correct it, or leave it out when it is not known
            drops.csv:3:1: error JOB012: the name of a drop is 'K 0 /1'; the name of a drop, or a range of names such as K-01..K-12; use letters and digits, with hyphens, points or single spaces between them, at most 64 characters

            """.ReplaceLineEndings("\n"),
            folder.Findings());
    }

    [Theory]
    [InlineData("/etc/hostname")]
    [InlineData("../drops.csv")]
    [InlineData("a/../../drops.csv")]
    [InlineData("C:\\\\drops.csv")]
    public void A_sheet_elsewhere_on_the_machine_is_not_read(string file)
    {
        using var folder = new SheetFolder(Head + $"sheets: [{{file: \"{file}\", as: drops}}]\n" + Survey);
        Assert.StartsWith("job.yaml:3:10: error SHT022", folder.Findings(), StringComparison.Ordinal);
    }

    [Fact]
    public void A_job_that_is_no_file_has_no_sheets_beside_it() =>
        Assert.Equal("SHT022", Assert.Single(JobFile.Parse(Head + "sheets: [{file: drops.csv, as: drops}]\n" + Survey, "standard input", null).Findings).Code);

    [Fact]
    public void A_sheet_that_is_not_there_is_said_with_the_name_that_was_perhaps_meant()
    {
        using var folder = new SheetFolder(Head + "sheets: [{file: drop.csv, as: drops}]\n" + Survey);
        folder.Put("drops.csv", "");
        Assert.Equal("drop.csv: error FILE001: no such file; a file that is there; did you mean 'drops.csv'?\n", folder.Findings());
    }

    [Theory]
    [InlineData("", "designs: {a: {}, b: {}}\n", "SHT024")]
    [InlineData("", "", "SHT024")]
    [InlineData(", design: c", "designs: {a: {}, b: {}}\n", "SHT024")]
    [InlineData(", design: b", "designs: {a: {}, b: {switches: {sw-1: {model: alder}}}}\n", "")]
    [InlineData("", "chosen: b\ndesigns: {a: {}, b: {switches: {sw-1: {model: alder}}}}\n", "")]
    public void Patching_goes_into_the_design_that_is_named_or_chosen(string said, string designs, string code)
    {
        using var folder = new SheetFolder(Head + $"sheets: [{{file: patch.csv, as: patching{said}}}]\nsurvey: {{spaces: {{c: {{}}}}, drops: {{K-01: {{from: c, length: 20 m, cable: cat6-23}}}}}}\n" + designs);
        folder.Put("patch.csv", "drop,port\nK-01,sw-1/1\n");
        Assert.Equal(code, string.Concat(folder.Read().Findings.Select(finding => finding.Code)));
    }

    [Fact]
    public void The_list_itself_is_checked_as_everything_in_a_job_file()
    {
        using var folder = new SheetFolder(Head + "sheets: [{file: drops.csv, as: dropps, sepparator: semicolon}]\n" + Survey);
        Assert.Equal(
            ["job.yaml:3:32: error JOB011", "job.yaml:3:40: error JOB001"],
            folder.Findings().Split('\n', StringSplitOptions.RemoveEmptyEntries).Select(line => string.Join(' ', line.Split(' ').Take(3)).TrimEnd(':')));
    }

    [Fact]
    public void A_sheet_is_never_changed()
    {
        const string Text = "drop;room\r\nK-01;hall";
        using var folder = new SheetFolder(("drops", Text));
        folder.Read();
        Assert.Equal(Text, File.ReadAllText(folder.PathOf("drops.csv")));
    }
}

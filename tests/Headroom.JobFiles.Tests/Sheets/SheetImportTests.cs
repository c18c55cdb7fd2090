using Headroom.Domain.Catalogues;
using Headroom.Domain.Findings;
using Headroom.JobFiles.Editing;
using Headroom.JobFiles.Yaml;

namespace Headroom.JobFiles.Tests.Sheets;

/// <summary>Rows go into the text of a job where they belong, and everything else stays byte for byte as it was.</summary>
public sealed class SheetImportTests
{
    private static readonly Catalogue Shipped = CatalogueFiles.ReadShipped().Value!;

    // Two rows put in at the mark; the text without the mark is the job before.
    public static TheoryData<string, string> Drops => new()
    {
        { "survey:\n  drops:   # by hand\n    K-00: {from: a}  # first\n      # deeper remark\n@  spaces: {a: {}}\n", "    " },
        { "survey:\n  spaces: {a: {}}\n@# the end\n", "  drops:\n    " },
        { "survey:\n    spaces:\n        a: {}\n@", "    drops:\n        " },
        { "survey:\r\n  drops:\r\n    K-00: {from: a}\r\n@", "    " },
    };

    [Theory, MemberData(nameof(Drops))]
    public void Rows_in_lines_stand_at_the_depth_of_their_neighbours(string marked, string begin)
    {
        var end = marked.Contains('\r') ? "\r\n" : "\n";
        var depth = begin[(begin.LastIndexOf('\n') + 1)..];
        var rows = begin + "K-01: {from: a, length: 31 m}" + end + depth + "\"02\": {from: a}" + end;
        Assert.Equal(marked.Replace("@", rows, StringComparison.Ordinal), Put(marked.Replace("@", "", StringComparison.Ordinal)));
    }

    [Theory]
    [InlineData("survey: {drops: {K-00: {from: a}}, spaces: {a: {}}}\n", "survey: {drops: {K-00: {from: a}, K-01: {from: a, length: 31 m}, \"02\": {from: a}}, spaces: {a: {}}}\n")]
    [InlineData("survey: {spaces: {a: {}}} # all\n", "survey: {spaces: {a: {}}, drops: {K-01: {from: a, length: 31 m}, \"02\": {from: a}}} # all\n")]
    [InlineData("job: x\nsurvey:\ndesigns: {}\n", "job: x\nsurvey:\n  drops:\n    K-01: {from: a, length: 31 m}\n    \"02\": {from: a}\ndesigns: {}\n")]
    [InlineData("job: x\ndesigns: {}\n", "job: x\n\nsurvey:\n  drops:\n    K-01: {from: a, length: 31 m}\n    \"02\": {from: a}\ndesigns: {}\n")]
    [InlineData("survey:\n  drops:\n  spaces: {a: {}}\n", "survey:\n  drops:\n    K-01: {from: a, length: 31 m}\n    \"02\": {from: a}\n  spaces: {a: {}}\n")]
    public void Rows_are_written_as_the_place_is(string before, string after) => Assert.Equal(after, Put(before));

    [Theory]
    [InlineData("survey: [a]\n")]
    [InlineData("survey:\n  drops: some\n")]
    public void Where_something_else_stands_nothing_is_changed(string before) =>
        Assert.Equal("EDT002", Assert.Single(JobFileEditor.PutRows(before, ["survey", "drops"], Rows, false).Findings).Code);

    [Fact]
    public void Cords_go_into_the_design_they_belong_to()
    {
        const string Before = "headroom: 1\njob: x\nsurvey: {spaces: {c: {}}, drops: {K-01: {from: c, length: 20 m, cable: cat6-23}}}\nchosen: b\ndesigns:\n  # the small one\n  a: {}\n  b:\n    switches: {sw-1: {model: alder}} # later two\n";
        var imported = Imported(Before, "patching", "drop,port\nK-01,sw-1/1\n");
        Assert.Equal("", string.Join('\n', imported.Findings));
        Assert.Equal(Before + "    patch:\n      K-01: sw-1/1\n", imported.Text);
    }

    [Theory]
    [InlineData("drop;room\nK-01;hall\nK-02;=B2\n")]
    [InlineData("drop;room\n03;hall\n")]
    [InlineData("drop;room\nK-01;nowhere\n")]
    [InlineData("drop;room;length (m)\nK-01;hall;9999\n")]
    public void One_slip_and_nothing_is_taken_over(string text)
    {
        var imported = Imported(SheetDesk.Job, "drops", text);
        Assert.Null(imported.Text);
        Assert.Contains(imported.Findings, finding => finding.Severity == Severity.Error);
    }

    [Fact]
    public void A_sheet_that_the_job_names_is_not_taken_over_too()
    {
        using var folder = new SheetFolder(("drops", "drop;room\nK-01;hall\n"));
        var imported = SheetImport.Read(folder.Job, SheetDesk.Plan("drops") with { File = folder.PathOf("drops.csv") }, Shipped);
        Assert.Equal("SHT025", Assert.Single(imported.Findings).Code);
    }

    [Fact]
    public void What_was_taken_over_reads_back_as_what_the_sheet_said()
    {
        const string Text = "device;model;drop;mac;watts\nap-1;bulrush;01;0200.5E10.0001;6,4\nyes;pipit;02;;\n12;pipit;03;;\n";
        var imported = Imported(SheetDesk.Job, "endpoints", Text);
        var read = JobFile.Parse(imported.Text!, "job.yaml", Shipped).Value!;
        Assert.Equal(["ap-1", "yes", "12"], read.Survey.Endpoints.Select(endpoint => endpoint.Id));
        Assert.Equal(("02:00:5e:10:00:01", 6.4), (read.Survey.Endpoints[0].Hardware, read.Survey.Endpoints[0].Draws["typical"].Value.Value));
    }

    [Fact]
    public void Many_rows_are_put_in_without_much_memory()
    {
        var text = "drop;room;length (m);cable\n" + string.Concat(Enumerable.Range(1, 2000).Select(row => $"D-{row:0000};hall;31;cat6-23\n"));
        var before = GC.GetAllocatedBytesForCurrentThread();
        Assert.Equal(2000, Imported(SheetDesk.Job, "drops", text).Lines.Count);
        Assert.True(GC.GetAllocatedBytesForCurrentThread() - before < 200_000_000);
    }

    private static YamlEntry[] Rows => [.. ((YamlMap)YamlText.Parse("{K-01: {from: a, length: 31 m}, \"02\": {from: a}}", "rows").Value!).Entries];

    private static string Put(string before)
    {
        var edit = JobFileEditor.PutRows(before, ["survey", "drops"], Rows, false);
        Assert.Equal("", string.Join('\n', edit.Findings));
        return edit.Text!;
    }

    private static ImportedSheet Imported(string job, string kind, string text)
    {
        using var folder = new SheetFolder(job);
        folder.Put(kind + ".csv", text);
        return SheetImport.Read(folder.Job, SheetDesk.Plan(kind) with { File = folder.PathOf(kind + ".csv") }, Shipped);
    }
}

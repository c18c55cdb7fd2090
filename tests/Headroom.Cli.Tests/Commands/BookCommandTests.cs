namespace Headroom.Cli.Tests.Commands;

/// <summary>Labels, workbook and the way back, as they are typed.</summary>
public sealed class BookCommandTests : IDisposable
{
    private const string Job = "headroom: 1\njob: x   # by hand\nsurvey:\n  spaces: {hall: {}, cupboard: {kind: cupboard}}\n  drops:\n    K-01..K-03: {from: cupboard, to: hall, length: 20 m}\ndesigns:\n  d: {}\n";

    private readonly string _folder = Directory.CreateTempSubdirectory("books").FullName;

    public BookCommandTests() => File.WriteAllText(At("job.yaml"), Job);

    [Fact]
    public void A_workbook_goes_out_and_comes_back_and_only_write_changes_the_job()
    {
        Assert.Equal((0, ""), Result("workbook", At("job.yaml"), "--out", At("b.xlsx"), "--csv", At("tables")));
        Assert.Equal((0, ""), Result("amend", At("job.yaml"), At("b.xlsx"), "--write"));
        Assert.Equal(Job, File.ReadAllText(At("job.yaml")));
        File.WriteAllText(At("drops.csv"), File.ReadAllText(At("tables/drops.csv")).Replace("K-02,cupboard,hall,20", "K-02,cupboard,hall,24", StringComparison.Ordinal));
        Assert.Equal((0, ""), Result("amend", At("job.yaml"), At("drops.csv"), "--as", "drops"));
        Assert.Equal(Job, File.ReadAllText(At("job.yaml")));
        Assert.Equal((0, ""), Result("amend", At("job.yaml"), At("drops.csv"), "--as", "drops", "--write"));
        Assert.Equal(
            Job.Replace("    K-01..K-03: {from: cupboard, to: hall, length: 20 m}", "    K-01: {from: cupboard, to: hall, length: 20 m}\n    K-02: {from: cupboard, to: hall, length: 24 m}\n    K-03: {from: cupboard, to: hall, length: 20 m}", StringComparison.Ordinal),
            File.ReadAllText(At("job.yaml")));
    }

    [Fact]
    public void An_edit_that_the_job_cannot_bear_leaves_it_as_it_is()
    {
        File.WriteAllText(At("drops.csv"), "drop,to\nK-01,nowhere\nK-02,hall\n");
        var result = TestDesk.Run(["amend", At("job.yaml"), At("drops.csv"), "--as", "drops", "--write"]);
        Assert.Equal((2, Job), (result.ExitCode, File.ReadAllText(At("job.yaml"))));
        Assert.Contains("drops.csv:2:1: error RUL010: drop K-01 names the space 'nowhere'", result.Out, StringComparison.Ordinal);
        Assert.EndsWith("job.yaml is left as it is.\n", result.Out.Replace("\n" + At("job.yaml"), " " + At("job.yaml"), StringComparison.Ordinal), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("labels", "--out", "nowhere/l.pdf")]
    [InlineData("workbook", "--out", "nowhere/b.xlsx")]
    [InlineData("workbook", "--out", ".")]
    public void Where_nothing_can_be_written_that_is_said_and_nothing_is_left(string command, string option, string file)
    {
        var (code, complaint) = Result(command, At("job.yaml"), option, At(file));
        Assert.Equal(2, code);
        Assert.Matches("its folder is not there|is a folder; name a file", complaint);
        Assert.Equal(["job.yaml"], Directory.GetFileSystemEntries(_folder).Select(Path.GetFileName));
    }

    [Fact]
    public void A_layout_of_the_firm_and_a_strip_of_any_width_are_taken()
    {
        File.WriteAllText(At("firm.yaml"), "firm: 1\nname: x\nlabels: {mine: {paper: A4, columns: 2, rows: 2, width: 90 mm, height: 50 mm}}\n");
        foreach (var layout in new[] { "mine", "strip-36", "a4-2x7" })
            Assert.Equal((0, ""), Result("labels", At("job.yaml"), "--out", At("l.pdf"), "--layout", layout, "--firm", At("firm.yaml")));
        var (code, complaint) = Result("labels", At("job.yaml"), "--out", At("l.pdf"), "--layout", "mine", "--firm", At("firm.yaml"), "--first", "5");
        Assert.Equal((2, "headroom: --first is at most 4 on mine (A4, 2 x 2 labels of 90 x 50 mm), not 5\n"), (code, complaint));
    }

    [Fact]
    public void A_firm_with_faults_stands_in_the_way_of_every_paper()
    {
        File.WriteAllText(At("firm.yaml"), "firm: 1\nname: x\ncolour: '#ffee00'\nunits: furlongs\n");
        var (code, complaint) = Result("papers", At("job.yaml"), "--out", At("papers"), "--firm", At("firm.yaml"));
        Assert.Equal((2, 2), (code, complaint.Split("error FRM").Length - 1));
        Assert.False(Directory.Exists(At("papers")));
    }

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    private static (int Code, string Err) Result(params string[] arguments)
    {
        var result = TestDesk.Run(arguments);
        return (result.ExitCode, result.Err);
    }

    private string At(string name) => Path.Combine(_folder, name);
}

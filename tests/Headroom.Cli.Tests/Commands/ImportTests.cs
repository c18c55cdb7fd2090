namespace Headroom.Cli.Tests.Commands;

public sealed class ImportTests : IDisposable
{
    private const string Job = "headroom: 1\njob: x   # by hand\nsurvey:\n  spaces: {hall: {}, cupboard: {kind: cupboard}}\n  drops:\n    K-01: {from: cupboard, to: hall}  # the first\n";

    private readonly string _folder = Directory.CreateTempSubdirectory("import").FullName;

    public ImportTests() => Put("job.yaml", Job);

    [Fact]
    public void What_was_understood_is_shown_and_nothing_written()
    {
        var sheet = Put("drops.csv", "Outlet;Room;Length (m);Colour\nK-02;hall;31,5;blue\nK-03;hall;;red\n");
        var result = Import(sheet, "--as", "drops", "--otherwise", "from=cupboard", "--column", "Colour=none");
        Assert.Equal((0, ""), (result.ExitCode, result.Err));
        Golden.Agrees("import.txt", Plain(result.Out));
        Assert.Equal(Job, Read("job.yaml"));
    }

    [Fact]
    public void With_write_the_rows_go_into_the_job_and_all_else_stays()
    {
        var sheet = Put("drops.csv", "drop,from,room,length (ft)\nK-02,cupboard,hall,98\n");
        Assert.Equal(0, Import(sheet, "--as", "drops", "--write").ExitCode);
        Assert.Equal(Job + "    K-02: {from: cupboard, to: hall, length: 98 ft}\n", Read("job.yaml"));
        Assert.Equal("drop,from,room,length (ft)\nK-02,cupboard,hall,98\n", File.ReadAllText(sheet));
        Assert.Equal(0, TestDesk.Run(["check", _folder]).ExitCode);
    }

    [Fact]
    public void A_row_taken_over_twice_is_refused()
    {
        var sheet = Put("drops.csv", "drop,from,room\nK-02,cupboard,hall\n");
        Import(sheet, "--as", "drops", "--write");
        var before = Read("job.yaml");
        var again = Import(sheet, "--as", "drops", "--write");
        Assert.Equal(2, again.ExitCode);
        Assert.Contains("error JOB002: 'K-02' a second time (first in ", again.Out, StringComparison.Ordinal);
        Assert.Equal(before, Read("job.yaml"));
    }

    [Fact]
    public void One_slip_and_nothing_is_written()
    {
        var sheet = Put("drops.csv", "drop,from,room\nK-02,cupboard,hall\n1-Mar,cupboard,hall\n");
        var result = Import(sheet, "--as", "drops", "--write");
        Assert.Equal(2, result.ExitCode);
        Assert.EndsWith("1 error: " + _folder + "/job.yaml is left as it is.\n", result.Out.Replace("\n" + _folder, " " + _folder, StringComparison.Ordinal), StringComparison.Ordinal);
        Assert.Equal(Job, Read("job.yaml"));
    }

    [Theory]
    [InlineData("import needs --as drops, endpoints, patching, prices or readings")]
    [InlineData("--as is drops, endpoints, patching, prices or readings, not 'dropps'; did you mean drops?", "--as", "dropps")]
    [InlineData("--otherwise is written as FIELD=VALUE, not 'cupboard'", "--as", "drops", "--otherwise", "cupboard")]
    [InlineData("--separator is semicolon, comma or tab, not ';'", "--as", "drops", "--separator", ";")]
    public void What_was_typed_wrong_is_said(string complaint, params string[] options)
    {
        var result = Import(Put("drops.csv", "drop\nK-02\n"), options);
        Assert.Equal(2, result.ExitCode);
        Assert.Contains(complaint, result.Err, StringComparison.Ordinal);
    }

    [Fact]
    public void A_sheet_or_job_that_is_not_there_is_said()
    {
        Assert.Contains("none.csv: error FILE001", Import(Path.Combine(_folder, "none.csv"), "--as", "drops").Out, StringComparison.Ordinal);
        Assert.Contains("none.yaml: error FILE001", TestDesk.Run(["import", Path.Combine(_folder, "none.yaml"), "x.csv", "--as", "drops"]).Out, StringComparison.Ordinal);
    }

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    private ProcessResult Import(string sheet, params string[] options) => TestDesk.Run(["import", _folder, sheet, .. options]);

    private string Plain(string text) => text.Replace(_folder + "/", "", StringComparison.Ordinal);

    private string Read(string name) => File.ReadAllText(Path.Combine(_folder, name));

    private string Put(string name, string text)
    {
        var path = Path.Combine(_folder, name);
        File.WriteAllText(path, text);
        return path;
    }
}

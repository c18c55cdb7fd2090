using System.Text.Json;
using Headroom.Cli.Many;
using Headroom.Cli.Tests.Commands;
using Headroom.Cli.Text;
using Headroom.Domain.Ledgers;

namespace Headroom.Cli.Tests.Many;

/// <summary>A folder of jobs: some sound, one broken, one a catalogue.</summary>
public sealed class FolderStudyTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("jobs").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    private string Put(string path, string text)
    {
        var file = Path.Combine(_folder, path);
        Directory.CreateDirectory(Path.GetDirectoryName(file)!);
        File.WriteAllText(file, text);
        return file;
    }

    private ProcessResult Study(params string[] options) => TestDesk.Run(["study", _folder, .. options]);

    private static string Sound => TestDesk.Run(["new"]).Out;

    private static string Short => File.ReadAllText(Repository.PathOf("examples/barn-vets/job.yaml"));

    [Fact]
    public void Every_job_below_the_folder_has_a_line_and_a_catalogue_has_none()
    {
        Put("b/job.yaml", Sound);
        Put("a/b/c/job.yaml", Sound);
        Put("d/other.yaml", Sound);
        Put("alone.yaml", Sound);
        Put("our-models.yaml", "# models\ncatalogue: 1\n");
        Put(".hidden/job.yaml", Sound);
        var result = Study("--format", "csv");
        Assert.Equal((0, ""), (result.ExitCode, result.Err));
        Assert.Equal(["a/b/c", "alone.yaml", "b", "d/other.yaml"], result.Out.Split("\r\n")[1..^1].Select(row => row.Split(',')[1]));
    }

    [Fact]
    public void A_link_that_leads_back_up_is_not_followed()
    {
        Put("a/job.yaml", Sound);
        Directory.CreateSymbolicLink(Path.Combine(_folder, "a", "again"), _folder);
        Assert.Equal(["a"], Study("--format", "csv").Out.Split("\r\n")[1..^1].Select(row => row.Split(',')[1]));
    }

    [Fact]
    public void A_pipe_with_the_name_of_a_job_holds_nothing_and_nobody_waits_for_it()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "pipes in folders are a thing of Unix");
        Put("a/job.yaml", Sound);
        Put("c.yaml", "");
        using (var made = System.Diagnostics.Process.Start("mkfifo", Path.Combine(_folder, "b.yaml")))
            made.WaitForExit();
        var result = Study("--format", "csv");
        Assert.Equal(["a", "b.yaml", "c.yaml"], result.Out.Split("\r\n")[1..^1].Select(row => row.Split(',')[1]).Order());
        Assert.Equal(2, result.Out.Split("an empty file").Length - 1);
    }

    [Fact]
    public void Where_more_files_lie_than_any_firm_has_the_folder_is_refused()
    {
        for (var i = 0; i <= JobFolder.Most; i++)
            File.WriteAllText(Path.Combine(_folder, $"{i}.yaml"), "x");
        var result = Study();
        Assert.Equal((2, ""), (result.ExitCode, result.Out));
        Assert.Contains("more than 10000 YAML files lie below", result.Err, StringComparison.Ordinal);
    }

    [Fact]
    public void Whether_a_file_is_a_catalogue_is_told_by_its_start()
    {
        Put("models.yaml", $"# {new string('x', 200)}\r\ncatalogue: 1\r\n");
        Put("job.yaml.yaml", $"{Sound}# catalogue: 1\n");
        Assert.Equal(["job.yaml.yaml"], JobFolder.Files(_folder)!.Select(Path.GetFileName));
    }

    [Fact]
    public void What_is_not_worked_out_comes_first_and_the_others_go_on()
    {
        Put("clear/job.yaml", Sound);
        Put("short/job.yaml", Short);
        Put("broken/job.yaml", "headroom: 1\njob: Broken\nsurvey: {spaces: {a: {size: 3 x 4}}, dropps: {}}\n");
        Put("no-yaml/job.yaml", "\t{");
        Put("no-design/job.yaml", "headroom: 1\njob: None yet\n");
        var result = Study();
        Assert.Equal((2, ""), (result.ExitCode, result.Err));
        Golden.Agrees("study-folder.txt", result.Out.Replace(_folder, "FOLDER", StringComparison.Ordinal));
        Assert.All(result.Out.Replace(_folder, "FOLDER", StringComparison.Ordinal).Split('\n'), line => Assert.True(Columns.Of(line) <= Pen.Columns, line));
    }

    [Fact]
    public void It_ends_with_1_when_one_is_short_and_strictly_when_one_is_unknown()
    {
        Put("clear/job.yaml", Sound);
        Assert.Equal(0, Study().ExitCode);
        Put("unknown/job.yaml", File.ReadAllText(Repository.PathOf("examples/one-desk/job.yaml")));
        Assert.Equal((0, 1), (Study().ExitCode, Study("--strict").ExitCode));
        Put("short/job.yaml", Short);
        Assert.Equal(1, Study().ExitCode);
    }

    [Fact]
    public void A_line_says_what_a_study_of_the_job_alone_says()
    {
        var file = Put("short/job.yaml", Short);
        using var many = JsonDocument.Parse(Study("--format", "json").Out);
        using var one = JsonDocument.Parse(TestDesk.Run(["study", file, "--format", "json"]).Out);
        var (line, ledger) = (many.RootElement.GetProperty("jobs")[0], one.RootElement);
        Assert.Equal(ledger.GetProperty("counts").GetProperty("short").GetInt32(), line.GetProperty("short").GetInt32());
        Assert.Equal(ledger.GetProperty("counts").GetProperty("clear").GetInt32(), line.GetProperty("clear").GetInt32());
        Assert.Equal(ledger.GetProperty("entries")[0].GetProperty("id").GetString(), line.GetProperty("worst").GetProperty("id").GetString());
        Assert.Equal(ledger.GetProperty("entries")[0].GetProperty("left").GetDouble(), line.GetProperty("worst").GetProperty("left").GetDouble());
    }

    [Fact]
    public void Its_json_is_what_the_schema_says_and_what_is_not_known_is_null()
    {
        Put("short/job.yaml", Short);
        Put("broken/job.yaml", "job: 3\n");
        var json = Study("--format", "json").Out;
        Assert.Equal("", ShippedSchema.Faults("jobs", json));
        Assert.NotEqual("", ShippedSchema.Faults("jobs", json.Replace("\"short\": null", "\"short\": \"0\"", StringComparison.Ordinal)));
        using var many = JsonDocument.Parse(json);
        Assert.Equal(JsonValueKind.Null, many.RootElement.GetProperty("jobs")[0].GetProperty("short").ValueKind);
    }

    [Fact]
    public void Many_at_once_come_to_what_one_after_the_other_does()
    {
        for (var i = 0; i < 40; i++)
            Put($"job-{i:00}/job.yaml", i % 3 == 0 ? Short : i % 3 == 1 ? Sound : "job: 3\n");
        var once = Study("--format", "csv").Out;
        Assert.Equal(once, Study("--format", "csv").Out);
        var lines = Directory.GetDirectories(_folder).Order(StringComparer.Ordinal).Select(job => JsonDocument.Parse(Alone(job)).RootElement.GetProperty("jobs")[0].GetProperty("verdict").ToString());
        Assert.Equal(lines.Order(StringComparer.Ordinal), once.Split("\r\n")[1..^1].Select(row => row.Split(',')[4].Replace("not worked out", "", StringComparison.Ordinal)).Order(StringComparer.Ordinal));

        static string Alone(string job)
        {
            var folder = Directory.CreateTempSubdirectory("alone").FullName;
            File.Copy(Path.Combine(job, "job.yaml"), Path.Combine(folder, "one.yaml"));
            var text = TestDesk.Run(["study", folder, "--format", "json"]).Out;
            Directory.Delete(folder, recursive: true);
            return text;
        }
    }

    [Fact]
    public void A_folder_without_jobs_is_refused() =>
        Assert.Equal(new(2, "", $"headroom: there is no job.yaml in {_folder} and no job file below it; name a job file, or a folder in which jobs lie\n"), Study());

    [Fact]
    public void A_design_that_a_job_has_not_is_said_in_its_line()
    {
        Put("clear/job.yaml", Sound);
        Put("short/job.yaml", Short);
        var result = Study("--design", "mended");
        Assert.Equal(2, result.ExitCode);
        Assert.Contains("- clear  not worked out: the job has no design 'mended'", result.Out, StringComparison.Ordinal);
        Assert.Contains(" short ", result.Out.Split('\n')[2], StringComparison.Ordinal);
    }

    [Fact]
    public void Progress_is_told_on_a_terminal_and_taken_away_again()
    {
        using var terminal = new StringWriter();
        using (var progress = new Progress(terminal, 12, isTerminal: true))
        {
            progress.Done();
            progress.Say();
        }

        Assert.Equal("\r1 of 12 jobs\r" + new string(' ', "12 of 12 jobs".Length) + "\r", terminal.ToString());
        using var file = new StringWriter();
        using (var progress = new Progress(file, 12, isTerminal: false))
            progress.Done();
        Assert.Equal("", file.ToString());
    }

    [Fact]
    public void Jobs_are_ordered_as_a_ledger_is() => Assert.Equal(
        ["broken", "short", "tight", "unknown", "clear"],
        StudiedFolder.Of("x", default,
        [
            new("c", "clear") { Verdict = Verdict.Clear }, new("u", "unknown") { Verdict = Verdict.Unknown }, new("t", "tight") { Verdict = Verdict.Tight },
            new("b", "broken") { NotWorked = "1 error" }, new("s", "short") { Verdict = Verdict.Short },
        ]).Jobs.Select(job => job.Name));
}

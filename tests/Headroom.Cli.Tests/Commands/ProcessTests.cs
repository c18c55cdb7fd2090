namespace Headroom.Cli.Tests.Commands;

/// <summary>The command as a process, the way people and scripts start it.</summary>
public sealed class ProcessTests : IDisposable
{
    private const string Barn = "examples/barn-vets/job.yaml";
    private readonly string _folder = Directory.CreateTempSubdirectory("process").FullName;

    public static TheoryData<string, string> Sheets => new()
    {
        { "study examples/one-desk/job.yaml", "study-one-desk.txt" },
        { "study examples/barn-vets/job.yaml", "study-barn-vets.txt" },
        { "study examples/barn-vets --design mended", "study-barn-vets-mended.txt" },
        { "study examples/barn-vets --count sw-1=port-limit", "study-barn-vets-by-port-limit.txt" },
        { "study examples/school-wings/job.yaml", "study-school-wings.txt" },
        { "study examples/one-desk/job.yaml --format json", "study-one-desk.json" },
        { "study examples/one-desk/job.yaml --format csv", "study-one-desk.csv" },
        { "study examples --only power", "study-examples.txt" },
        { "compare examples/barn-vets as-offered mended --only power", "compare-designs.txt" },
        { "compare examples/barn-vets --swap wren-b=redshank --swap pipit=bulrush --units imperial --only power", "compare-swap.txt" },
        { "compare examples/barn-vets as-offered mended --format json --only power", "compare-designs.json" },
        { "remedies examples/barn-vets/job.yaml", "remedies.txt" },
        { "remedies examples/barn-vets/job.yaml --entry field-link/volts --format csv", "remedies-volts.csv" },
        { "remedies examples/barn-vets/job.yaml --entry field-link/volts --format json", "remedies-volts.json" },
        { "remedies examples/barn-vets/job.yaml --design mended --entry K-05/cords --units imperial", "remedies-cords.txt" },
        { "record examples/firm-record", "record.txt" },
        { "explain examples/barn-vets/job.yaml field-link/volts", "explain-volts.txt" },
        { "explain examples/barn-vets/job.yaml field-link/volts --units imperial", "explain-volts-imperial.txt" },
        { "explain examples/barn-vets/job.yaml field-link/volts --format json", "explain-volts.json" },
    };

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Theory, MemberData(nameof(Sheets))]
    public void What_it_prints_is_as_accepted(string typed, string expected)
    {
        var result = Run.Headroom([.. typed.Split(' '), "--on", "2026-11-25"]);
        Assert.True(result.ExitCode < 2, result.Err);
        Golden.Agrees(expected, result.Out);
    }

    [Theory]
    [InlineData("catalogue list", "catalogue.txt")]
    [InlineData("catalogue list switches --where 2.5", "catalogue-where.txt")]
    [InlineData("catalogue show wren-b", "catalogue-wren-b.txt")]
    [InlineData("catalogue show bulrush", "catalogue-bulrush.txt")]
    [InlineData("check examples/barn-vets/job.yaml", "check-barn-vets.txt")]
    [InlineData("catalogue check", "catalogue-check.txt")]
    [InlineData("new", "new.txt")]
    [InlineData("reckon --list", "reckon-list.txt")]
    [InlineData("reckon far-end-volts volts 24V length 120 ft cable 24AWG draw 12 W temperature -4 F --units imperial", "reckon-imperial.txt")]
    [InlineData("reckon far-end-volts volts 54 V length 82 m cable 23 AWG draw 13 W --format json", "reckon.json")]
    public void What_it_shows_without_a_study_is_as_accepted(string typed, string expected)
    {
        var result = Run.Headroom(typed.Split(' '));
        Assert.Equal((0, ""), (result.ExitCode, result.Err));
        Golden.Agrees(expected, result.Out);
    }

    [Theory]
    [InlineData("job")]
    [InlineData("catalogue")]
    [InlineData("ledger")]
    [InlineData("reckon")]
    [InlineData("compare")]
    [InlineData("jobs")]
    [InlineData("remedies")]
    [InlineData("restart")]
    [InlineData("acceptance")]
    public void A_schema_is_printed_as_json(string kind)
    {
        var result = Run.Headroom("schema", kind);
        Assert.Equal((0, ""), (result.ExitCode, result.Err));
        using var schema = System.Text.Json.JsonDocument.Parse(result.Out);
        Assert.StartsWith("https://json-schema.org/", schema.RootElement.GetProperty("$schema").GetString(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("study examples/none/job.yaml")]
    [InlineData("study src/Headroom.Domain")]
    [InlineData("compare examples/barn-vets/job.yaml as-offered mendd")]
    [InlineData("compare examples/barn-vets/job.yaml --swap wren-b=whimbrel")]
    [InlineData("reckon far-end-volts volts 54 V length 82 V")]
    [InlineData("study BINARY")]
    [InlineData("study BROKEN")]
    [InlineData("study examples/barn-vets/job.yaml --design mendd")]
    [InlineData("study examples/barn-vets/job.yaml --count sw-9=class")]
    [InlineData("study examples/barn-vets/job.yaml --on tomorrow")]
    [InlineData("study examples/barn-vets/job.yaml --format json --format csv")]
    [InlineData("study examples/barn-vets/job.yaml --catalogue examples/none.yaml")]
    [InlineData("study examples/barn-vets/job.yaml --wat")]
    [InlineData("explain examples/barn-vets/job.yaml power/sw-1/restrat")]
    [InlineData("catalogue show wren-z")]
    [InlineData("remedies examples/none/job.yaml")]
    [InlineData("remedies BROKEN")]
    [InlineData("remedies examples/barn-vets/job.yaml --entry power/field-lnk/volts")]
    [InlineData("remedies examples/barn-vets/job.yaml --take 99")]
    [InlineData("remedies examples/barn-vets/job.yaml --take 0")]
    [InlineData("remedies examples/barn-vets/job.yaml --take two")]
    [InlineData("remedies examples/barn-vets/job.yaml --take 1 --as mended")]
    [InlineData("remedies examples/barn-vets/job.yaml --as better")]
    public void What_cannot_be_worked_out_leaves_the_result_empty_and_says_why_without_a_trace(string typed)
    {
        File.WriteAllBytes(Path.Combine(_folder, "BINARY"), [0x7F, 0x45, 0x4C, 0x46, 0, 1, 2, 0xFF]);
        File.WriteAllText(Path.Combine(_folder, "BROKEN"), "headroom: 1\njob: Broken\nsurvey: {spaces: {a: {size: 3 x 4}}, dropps: {}}\n");
        var result = Run.Headroom([.. typed.Split(' ').Select(word => word is "BINARY" or "BROKEN" ? Path.Combine(_folder, word) : word)]);
        Assert.Equal((2, ""), (result.ExitCode, result.Out));
        Assert.NotEqual("", result.Err);
        Assert.DoesNotContain("   at ", result.Err, StringComparison.Ordinal);
        Assert.DoesNotContain("fault of headroom", result.Err, StringComparison.Ordinal);
    }

    [Fact]
    public void Errors_in_a_job_are_counted_and_end_the_work()
    {
        File.WriteAllText(Path.Combine(_folder, "job.yaml"), "headroom: 1\njob: Broken\nsurvey: {spaces: {a: {size: 3 x 4}}, dropps: {}}\n");
        Assert.EndsWith(": nothing was worked out\n", Run.Headroom("study", _folder).Err, StringComparison.Ordinal);
        var check = Run.Headroom("check", _folder);
        Assert.Equal((2, ""), (check.ExitCode, check.Err));
        Assert.Matches(@"\A(.+job\.yaml:\d+:\d+: error JOB\d+: .+\n)+.+: \d errors?\n\z", check.Out);
    }

    [Fact]
    public void A_job_may_come_through_a_pipe()
    {
        var start = Run.HeadroomStart("study", "-", "--on", "2026-11-25", "--format", "csv") with { Input = File.ReadAllText(Repository.PathOf(Barn)) };
        Assert.Equal(Run.Headroom("study", Barn, "--on", "2026-11-25", "--format", "csv"), Run.Process(start));
    }

    [Fact]
    public void A_reader_that_stops_early_is_no_trouble()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "needs sh");
        var headroom = Run.HeadroomStart("study", Barn, "--format", "json");
        var result = Run.Process(new ProcessStart("sh", ["-c", "\"$@\" | head -n 1", "sh", headroom.File, .. headroom.Arguments]));
        Assert.Equal(new(0, "{\n", ""), result);
    }

    [Fact]
    public void Where_only_ascii_is_understood_only_ascii_is_printed()
    {
        var start = Run.HeadroomStart("study", Barn, "--on", "2026-11-25", "--all");
        foreach (var (name, value) in new[] { ("HEADROOM_ASCII", "1"), ("TERM", "dumb"), ("LC_ALL", "en_US.ISO-8859-1") })
        {
            var result = Run.Process(start with { Environment = new Dictionary<string, string?>(start.Environment) { [name] = value } });
            Assert.True(result.Out.Length > 100, result.Err);
            Assert.DoesNotContain(result.Out, sign => sign > 127);
        }
    }

    [Fact]
    public void What_is_short_shows_in_the_exit_code_and_unknown_only_when_strict()
    {
        Assert.Equal(1, Run.Headroom("study", Barn).ExitCode);
        Assert.Equal(0, Run.Headroom("study", Barn, "--design", "mended").ExitCode);
        Assert.Equal(1, Run.Headroom("study", Barn, "--design", "mended", "--strict").ExitCode);
    }
}

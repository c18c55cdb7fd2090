using System.Text.Json;

namespace Headroom.Cli.Tests.Commands;

/// <summary>remedies lists what helps, and writes one as a design.</summary>
public sealed class RemediesTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("remedies").FullName;

    public RemediesTests() => File.Copy(Repository.PathOf("examples/barn-vets/job.yaml"), Job);

    private string Job => Path.Combine(_folder, "job.yaml");

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public void Two_remedies_leave_nothing_short_in_the_short_example_and_the_study_says_so()
    {
        Assert.Equal(1, TestDesk.Run(["study", Job]).ExitCode);
        // The first step mends three of four at once: another switch. The second what is left: the radio's volts.
        var first = Number("as-offered", remedy => remedy.GetProperty("counts").GetProperty("short").GetInt32() == 1);
        Assert.Equal(1, TestDesk.Run(["remedies", Job, "--take", $"{first}"]).ExitCode);
        Assert.Equal(1, TestDesk.Run(["study", Job, "--design", "as-offered-2"]).ExitCode);
        var second = Number("as-offered-2", remedy => remedy.GetProperty("counts").GetProperty("short").GetInt32() == 0);
        var taken = TestDesk.Run(["remedies", Job, "--design", "as-offered-2", "--take", $"{second}"]);
        Assert.Equal((0, ""), (taken.ExitCode, taken.Err));
        Assert.Contains("Design as-offered-2-2 is written, like as-offered-2", taken.Out, StringComparison.Ordinal);
        var study = TestDesk.Run(["study", Job, "--design", "as-offered-2-2"]);
        Assert.Equal((0, ""), (study.ExitCode, study.Err));
        Assert.Contains("Nothing is short.", study.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_taken_is_what_was_listed_and_the_file_is_the_same_elsewhere()
    {
        var before = File.ReadAllText(Job);
        using var listed = JsonDocument.Parse(TestDesk.Run(["remedies", Job, "--format", "json"]).Out);
        var remedy = listed.RootElement.GetProperty("remedies")[1];
        TestDesk.Run(["remedies", Job, "--take", "2", "--as", "second-try"]);
        var after = File.ReadAllText(Job);
        var at = after.IndexOf("  second-try:", StringComparison.Ordinal);
        Assert.Equal(before, after.Remove(at, after.Length - before.Length));
        var added = after.Substring(at, after.Length - before.Length).Split('\n').Skip(1).Select(line => line.Length > 4 ? line[4..] : "");
        Assert.Equal(remedy.GetProperty("design").GetString()!.TrimEnd(), string.Join('\n', added).TrimEnd());
        using var studied = JsonDocument.Parse(TestDesk.Run(["study", Job, "--design", "second-try", "--format", "json"]).Out);
        Assert.Equal(remedy.GetProperty("counts").GetRawText().ReplaceLineEndings("").Replace(" ", "", StringComparison.Ordinal), studied.RootElement.GetProperty("counts").GetRawText().ReplaceLineEndings("").Replace(" ", "", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("there is no remedy 99: design as-offered has remedies 1 to", "--take", "99")]
    [InlineData("--take is the number of a remedy, from 1, not '0'", "--take", "0")]
    [InlineData("--take is the number of a remedy, from 1, not '1.5'", "--take", "1.5")]
    [InlineData("the job has a design 'mended' already; give another name with --as", "--take", "1", "--as", "mended")]
    [InlineData("error JOB012", "--take", "1", "--as", "a: {b")]
    [InlineData("--as names what --take writes", "--as", "better")]
    [InlineData("there is no entry 'power/field-lnk/volts'; did you mean power/field-link/volts?", "--entry", "power/field-lnk/volts")]
    [InlineData("'money/offer/cost' is a figure without a limit", "--entry", "money/offer/cost")]
    [InlineData("the job has no design 'as-offred'; did you mean as-offered?", "--design", "as-offred")]
    public void What_cannot_be_done_is_refused_and_the_job_left_as_it_is(string complaint, params string[] words)
    {
        var before = File.ReadAllText(Job);
        var result = TestDesk.Run(["remedies", Job, .. words]);
        Assert.Equal((2, ""), (result.ExitCode, result.Out));
        Assert.Contains(complaint, result.Err, StringComparison.Ordinal);
        Assert.Equal(before, File.ReadAllText(Job));
    }

    [Fact]
    public void Nothing_can_be_taken_into_standard_input()
    {
        var result = TestDesk.Run(["remedies", "-", "--take", "1"], File.ReadAllText(Job));
        Assert.Equal((2, ""), (result.ExitCode, result.Out));
        Assert.Contains("standard input has none", result.Err, StringComparison.Ordinal);
    }

    [Fact]
    public void What_it_writes_as_json_is_what_the_schema_says()
    {
        var json = TestDesk.Run(["remedies", Job, "--format", "json"]).Out;
        Assert.Equal("", ShippedSchema.Faults("remedies", json));
        Assert.NotEqual("", ShippedSchema.Faults("remedies", json.Replace("\"certainty\": \"sure\"", "\"certainty\": \"hope\"", StringComparison.Ordinal)));
    }

    [Fact]
    public void Where_nothing_is_amiss_it_says_so_and_ends_well()
    {
        var result = TestDesk.Run(["remedies", Job, "--design", "mended", "--entry", "cam-1/watts"]);
        Assert.Equal((0, ""), (result.ExitCode, result.Err));
        Assert.Contains("power/cam-1/watts: clear already, nothing to mend.", result.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void A_design_that_changes_the_building_is_told_by_compare()
    {
        var number = Number("as-offered", remedy => remedy.GetProperty("kind").GetString() == "cords");
        TestDesk.Run(["remedies", Job, "--take", $"{number}", "--as", "corded"]);
        var result = TestDesk.Run(["compare", Job, "as-offered", "corded"]);
        Assert.Contains("in place of as surveyed", string.Join(' ', result.Out.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries)), StringComparison.Ordinal);
    }

    private int Number(string design, Predicate<JsonElement> wanted)
    {
        using var listed = JsonDocument.Parse(TestDesk.Run(["remedies", Job, "--design", design, "--format", "json"]).Out);
        return listed.RootElement.GetProperty("remedies").EnumerateArray().First(remedy => wanted(remedy)).GetProperty("number").GetInt32();
    }
}

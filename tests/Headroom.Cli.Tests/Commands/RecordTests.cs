namespace Headroom.Cli.Tests.Commands;

/// <summary>note and overrule put one record into a job file.</summary>
public sealed class RecordTests : IDisposable
{
    private const string Text = """
        headroom: 1
        job: x   # by hand
        survey:
          endpoints: {p-1: pipit}
        designs:
          d: {switches: {sw-1: {model: alder}}, patch: {p-1: sw-1/1}}

        """;

    private readonly string _folder = Directory.CreateTempSubdirectory("record").FullName;

    public RecordTests() => File.WriteAllText(Job, Text);

    private string Job => Path.Combine(_folder, "job.yaml");

    [Fact]
    public void A_reading_is_written_down_with_the_day_and_shown()
    {
        var result = TestDesk.Run(["note", _folder, "what=watts", "at=sw-1/1", "value=2.4 W", "with=plug meter", "while=typical"]);
        Assert.Equal(new(0, "line 8: readings:\nline 9: - {what: watts, at: sw-1/1, value: 2.4 W, with: plug meter, on: 2026-11-25, while: typical}\n", ""), result);
        Assert.Equal(Text + "\nreadings:\n  - {what: watts, at: sw-1/1, value: 2.4 W, with: plug meter, on: 2026-11-25, while: typical}\n", File.ReadAllText(Job));
    }

    [Fact]
    public void A_reading_that_was_noted_stands_in_the_study()
    {
        TestDesk.Run(["note", _folder, "what=watts", "at=sw-1/1", "value=2.4 W", "with=plug meter", "while=typical"]);
        Assert.Contains("plug meter", TestDesk.Run(["study", _folder]).Out, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("what was typed: error JOB006", "note", "what=watts", "at=sw-1/1", "value=2.4")]
    [InlineData("error RUL025", "note", "what=watts", "at=sw-2/1", "value=2.4 W")]
    [InlineData("note takes KEY=VALUE behind the JOB, not 'watts'", "note", "watts")]
    [InlineData("note needs a JOB and KEY=VALUE for each thing to be written", "note")]
    [InlineData("there is no entry 'power/sw-1/wats'; did you mean power/sw-1/watts?", "overrule", "entry=power/sw-1/wats", "because=seen", "by=me")]
    [InlineData("what was typed: error JOB003: because of the overruling is not written", "overrule", "entry=power/sw-1/watts", "by=me")]
    [InlineData("what was typed: error JOB003: entry of the overruling is not written", "overrule", "because=seen", "by=me")]
    public void What_cannot_be_written_down_is_refused_and_the_job_left_as_it_is(string complaint, string command, params string[] words)
    {
        var result = TestDesk.Run([command, _folder, .. words]);
        Assert.Equal((2, ""), (result.ExitCode, result.Out));
        Assert.Contains(complaint, result.Err, StringComparison.Ordinal);
        Assert.Equal(Text, File.ReadAllText(Job));
    }

    [Fact]
    public void An_entry_is_overruled_by_a_part_of_its_id_and_the_study_says_so()
    {
        var result = TestDesk.Run(["overrule", _folder, "entry=powered-ports", "because=the two spare ports stay free", "by=J. Marsh"]);
        Assert.Equal(0, result.ExitCode);
        Assert.EndsWith("- {entry: power/sw-1/powered-ports, because: the two spare ports stay free, by: J. Marsh, on: 2026-11-25}\n", result.Out, StringComparison.Ordinal);
        Assert.Contains("J. Marsh", TestDesk.Run(["explain", _folder, "powered-ports"]).Out, StringComparison.Ordinal);
    }

    public void Dispose() => Directory.Delete(_folder, recursive: true);
}

namespace Headroom.Cli.Tests.Commands;

/// <summary>What is published has every library that a command which writes files needs: each is started as a process of its own.</summary>
public sealed class PublishedFilesTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("headroom-").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Theory]
    [InlineData("papers examples/barn-vets/job.yaml --only limits --out OUT")]
    [InlineData("draw examples/barn-vets/job.yaml --only rack --out OUT")]
    [InlineData("labels examples/barn-vets/job.yaml --out OUT/labels.pdf")]
    [InlineData("workbook examples/barn-vets/job.yaml --out OUT/schedules.xlsx")]
    [InlineData("store list --data OUT")]
    public void It_starts_and_writes(string typed)
    {
        var result = Run.Headroom(typed.Replace("OUT", _folder, StringComparison.Ordinal).Split(' '));
        Assert.Equal("", result.Err);
        Assert.True(result.ExitCode < 2, result.Out);
        Assert.NotEmpty(Directory.EnumerateFiles(_folder, "*", SearchOption.AllDirectories));
    }
}

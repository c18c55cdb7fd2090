namespace Headroom.Cli.Tests.Commands;

/// <summary>Who has no sheets does not wait for what reads them.</summary>
public sealed class ColdStartTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("cold").FullName;

    // The library that cuts sheets into cells is made unreadable: whatever loads it fails.
    [Fact]
    public void A_job_without_sheets_is_studied_without_what_reads_them()
    {
        var start = Run.HeadroomStart("--version");
        Assert.SkipUnless(start.File == "dotnet", "Another executable is tested than the one built here.");
        var built = Path.GetDirectoryName(start.Arguments[0])!;
        foreach (var file in Directory.GetFiles(built, "*", SearchOption.AllDirectories))
        {
            var copy = Path.Combine(_folder, Path.GetRelativePath(built, file));
            Directory.CreateDirectory(Path.GetDirectoryName(copy)!);
            File.Copy(file, copy);
        }

        File.WriteAllText(Path.Combine(_folder, "Sep.dll"), "");
        Assert.True(Study("examples/barn-vets/job.yaml").ExitCode < 2);
        Assert.Equal(2, Study("examples/print-shop/job.yaml").ExitCode);
    }

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    private ProcessResult Study(string job)
    {
        var start = Run.HeadroomStart("study", job);
        return Run.Process(start with { Arguments = [Path.Combine(_folder, "headroom.dll"), "study", job] });
    }
}

namespace Headroom.Cli.Tests.Commands;

public sealed class FolderReviewTests
{
    [Fact]
    public void Of_a_folder_of_jobs_there_is_a_monthly_review_and_no_other_paper()
    {
        using var folder = new NewFolder();
        var examples = System.IO.Path.Combine(Repository.Root, "examples");
        var review = TestDesk.Run(["papers", examples, "--out", folder.Path, "--only", "monthly-review"]);
        Assert.Equal((0, ""), (review.ExitCode, review.Err));
        Assert.Equal(["inside-monthly-review.pdf"], Directory.GetFiles(folder.Path).Select(System.IO.Path.GetFileName));
        var other = TestDesk.Run(["papers", examples, "--out", folder.Path]);
        Assert.Equal((2, ""), (other.ExitCode, other.Out));
        Assert.Contains("--only monthly-review", other.Err, StringComparison.Ordinal);
    }

    [Fact]
    public void A_folder_in_the_place_of_a_paper_is_named_and_nothing_is_written_beside_it()
    {
        using var folder = new NewFolder();
        Directory.CreateDirectory(System.IO.Path.Combine(folder.Path, "there", "limits.pdf"));
        var taken = TestDesk.Run(["papers", System.IO.Path.Combine(Repository.Root, "examples", "one-desk"), "--out", System.IO.Path.Combine(folder.Path, "there"), "--only", "limits,safety-sheet"]);
        Assert.Equal(2, taken.ExitCode);
        Assert.Contains("limits.pdf is a folder", taken.Err, StringComparison.Ordinal);
        Assert.Single(Directory.GetFileSystemEntries(System.IO.Path.Combine(folder.Path, "there")));
    }

    private sealed class NewFolder : IDisposable
    {
        public string Path { get; } = Directory.CreateTempSubdirectory("headroom-review-").FullName;

        public void Dispose() => Directory.Delete(Path, recursive: true);
    }
}

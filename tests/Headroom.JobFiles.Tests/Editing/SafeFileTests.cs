using System.Text;
using Headroom.JobFiles.Editing;

namespace Headroom.JobFiles.Tests.Editing;

public sealed class SafeFileTests : IDisposable
{
    // Half of a letter of four bytes: no file can hold it, so that writing fails when the file beside is open already.
    private const string NoUnicode = "job: \uD83D\n";

    private readonly string folder = Directory.CreateTempSubdirectory("headroom-safe-").FullName;

    private string Job => Path.Combine(folder, "job.yaml");

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Fact]
    public void The_new_text_takes_the_place_of_the_old()
    {
        File.WriteAllText(Job, "old, and longer than the new one");
        SafeFile.Replace(Job, "new ä");
        Assert.Equal("new ä"u8.ToArray(), File.ReadAllBytes(Job));
        OnlyTheJob();
    }

    [Fact]
    public void A_failing_write_leaves_the_old_file_and_nothing_beside_it()
    {
        File.WriteAllText(Job, "old");
        Assert.Throws<EncoderFallbackException>(() => SafeFile.Replace(Job, NoUnicode));
        Assert.Equal("old", File.ReadAllText(Job));
        OnlyTheJob();
    }

    [Fact]
    public void A_folder_in_the_place_of_the_file_is_refused_and_left()
    {
        Directory.CreateDirectory(Job);
        Assert.Throws<FileNotFoundException>(() => SafeFile.Replace(Job, "new"));
        Assert.Throws<IOException>(() => SafeFile.Create(Job, "new"));
        Assert.True(Directory.Exists(Job));
        OnlyTheJob();
    }

    [Fact]
    public void A_file_that_is_not_there_is_not_replaced()
    {
        Assert.Throws<FileNotFoundException>(() => SafeFile.Replace(Job, "new"));
        Assert.Empty(Directory.EnumerateFileSystemEntries(folder));
    }

    [Fact]
    public void Who_may_read_it_stays_as_it_was()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "Windows has other permissions.");
        if (OperatingSystem.IsWindows())
            return;
        const UnixFileMode bits = UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.GroupRead | UnixFileMode.GroupWrite | UnixFileMode.OtherExecute;
        File.WriteAllText(Job, "old");
        File.SetUnixFileMode(Job, bits);
        SafeFile.Replace(Job, "new");
        Assert.Equal(bits, File.GetUnixFileMode(Job));
    }

    [Fact]
    public void A_link_stays_a_link_and_its_file_is_replaced()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "Links need rights there.");
        var inner = Directory.CreateDirectory(Path.Combine(folder, "inner")).FullName;
        var real = Path.Combine(inner, "real.yaml");
        File.WriteAllText(real, "old");
        File.CreateSymbolicLink(Job, Path.Combine("inner", "real.yaml"));
        SafeFile.Replace(Job, "new");
        Assert.Equal("new", File.ReadAllText(real));
        Assert.NotNull(new FileInfo(Job).LinkTarget);
        Assert.Equal([real], Directory.EnumerateFiles(inner));
    }

    [Fact]
    public void A_byte_order_mark_stays()
    {
        File.WriteAllBytes(Job, [.. "\uFEFFold"u8]);
        SafeFile.Replace(Job, "new");
        Assert.Equal([.. "\uFEFFnew"u8], File.ReadAllBytes(Job));
    }

    [Fact]
    public void A_new_file_is_written()
    {
        SafeFile.Create(Job, "new");
        Assert.Equal("new", File.ReadAllText(Job));
        OnlyTheJob();
    }

    [Fact]
    public void A_new_file_never_takes_the_place_of_another()
    {
        File.WriteAllText(Job, "old");
        Assert.Throws<IOException>(() => SafeFile.Create(Job, "new"));
        Assert.Equal("old", File.ReadAllText(Job));
        OnlyTheJob();
    }

    [Fact]
    public void A_new_file_that_cannot_be_written_leaves_nothing()
    {
        Assert.Throws<EncoderFallbackException>(() => SafeFile.Create(Job, NoUnicode));
        Assert.Empty(Directory.EnumerateFileSystemEntries(folder));
    }

    private void OnlyTheJob() => Assert.Equal([Job], Directory.EnumerateFileSystemEntries(folder));
}

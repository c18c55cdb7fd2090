using System.Text;
using Headroom.JobFiles.Files;

namespace Headroom.JobFiles.Tests.Files;

public sealed class TextFileTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("headroom").FullName;

    [Fact]
    public void A_file_that_is_not_there_is_said_with_the_name_that_was_perhaps_meant()
    {
        File.WriteAllText(Path.Combine(_folder, "fern-lane.yaml"), "a: 1");
        Refused("fernlane.yaml", "error FILE001: no such file; a file that is there; did you mean 'fern-lane.yaml'?");
        Refused("other.txt", "error FILE001: no such file; a file that is there; check the name and the folder");
        Refused("no/such/folder/a.yaml", "error FILE001: no such file");
        Refused("a\0b", "error FILE001: no such file");
    }

    [Fact]
    public void A_folder_is_said_to_be_one() => Refused("", "error FILE002: a folder; a file;");

    [Fact]
    public void A_file_that_may_not_be_read_is_said_so()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows() || Environment.UserName == "root", "Rights do not stop this user.");
        var path = Put("locked.yaml", "a: 1"u8);
        if (!OperatingSystem.IsWindows())
            File.SetUnixFileMode(path, UnixFileMode.None);
        Refused("locked.yaml", "error FILE003: a file that may not be read");
    }

    [Fact]
    public void A_file_that_fails_while_it_is_read_is_said_so()
    {
        Assert.SkipUnless(File.Exists("/proc/self/mem"), "There is no such file here.");
        Assert.StartsWith(
            "/proc/self/mem: error FILE003: a file that cannot be read (",
            Assert.Single(TextFile.Read("/proc/self/mem").Findings).ToString(),
            StringComparison.Ordinal);
    }

    [Fact]
    public void A_hundred_megabytes_are_refused_before_anything_is_read()
    {
        using (var file = File.Create(Path.Combine(_folder, "large.yaml")))
            file.SetLength(100_000_000);
        var before = GC.GetAllocatedBytesForCurrentThread();
        Refused("large.yaml", "error FILE004: a file of 95.4 MiB or more; at most 8 MiB;");
        Assert.True(GC.GetAllocatedBytesForCurrentThread() - before < 1_000_000);
    }

    [Fact]
    public void A_file_that_never_ends_is_refused_too()
    {
        Assert.SkipUnless(File.Exists("/dev/zero"), "There is no such device here.");
        Assert.Equal("FILE004", Assert.Single(TextFile.Read("/dev/zero").Findings).Code);
    }

    [Fact]
    public void Just_the_most_bytes_are_read()
    {
        Put("full.yaml", Encoding.ASCII.GetBytes(new string('#', TextFile.MostBytes)));
        Assert.Equal(TextFile.MostBytes, Read("full.yaml").Value!.Length);
        Put("over.yaml", Encoding.ASCII.GetBytes(new string('#', TextFile.MostBytes + 1)));
        Refused("over.yaml", "error FILE004: a file of 8 MiB or more");
    }

    [Theory]
    [InlineData("FILE006", new byte[] { (byte)'a', (byte)'\n', (byte)'b', (byte)'c', 0 }, ":2:3")]
    [InlineData("FILE006", new byte[] { 0x7F, (byte)'E', (byte)'L', (byte)'F', 2, 1, 1, 0 }, ":1:8")]
    [InlineData("FILE007", new byte[] { 0xFF, 0xFE, (byte)'a', 0 }, "")]
    [InlineData("FILE007", new byte[] { 0xFE, 0xFF, 0, (byte)'a' }, "")]
    [InlineData("FILE007", new byte[] { (byte)'a', 0, (byte)':', 0 }, "")]
    [InlineData("FILE007", new byte[] { 0, (byte)'a', 0, (byte)':' }, "")]
    [InlineData("FILE007", new byte[] { 0xFF, 0xFE, 0, 0, (byte)'a', 0, 0, 0 }, "")]
    [InlineData("FILE007", new byte[] { 0, 0, 0, (byte)'a' }, "")]
    [InlineData("FILE008", new byte[] { (byte)'a', (byte)'\n', (byte)'2', (byte)'1', (byte)' ', 0xB0, (byte)'C' }, ":2:4")]
    [InlineData("FILE008", new byte[] { 0xC3, 0xA4, (byte)'\n', 0xC3, 0xA4, 0xC3 }, ":2:2")]
    public void Bytes_that_are_not_utf8_are_named_for_what_they_are(string code, byte[] bytes, string place)
    {
        Put("x.yaml", bytes);
        var finding = Assert.Single(Read("x.yaml").Findings);
        Assert.Equal(code, finding.Code);
        Assert.EndsWith("x.yaml" + place, finding.At.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void The_byte_of_an_older_encoding_is_guessed()
    {
        Put("x.yaml", [(byte)'2', (byte)'1', (byte)' ', 0xB0, (byte)'C']);
        Assert.Equal("the byte 0xB0, perhaps '°' in an older encoding", Assert.Single(Read("x.yaml").Findings).Given);
    }

    [Fact]
    public void A_byte_order_mark_is_passed_over()
    {
        Put("x.yaml", [0xEF, 0xBB, 0xBF, (byte)'a']);
        Assert.Equal("a", Read("x.yaml").Value);
    }

    [Fact]
    public void Whatever_the_bytes_reading_ends_with_a_text_or_a_finding() => Gen.Byte.Array[0, 300].Sample(
        bytes =>
        {
            var read = Utf8Text.Decode(bytes, "f");
            return read.Value is not null ^ read.Findings.Count > 0;
        },
        iter: 20_000);

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    private string Put(string name, ReadOnlySpan<byte> bytes)
    {
        var path = Path.Combine(_folder, name);
        File.WriteAllBytes(path, bytes);
        return path;
    }

    private Loaded<string> Read(string name) => TextFile.Read(Path.Combine(_folder, name));

    private void Refused(string name, string begins)
    {
        var read = Read(name);
        Assert.Null(read.Value);
        Assert.StartsWith($"{Path.Combine(_folder, name)}: {begins}", Assert.Single(read.Findings).ToString(), StringComparison.Ordinal);
    }
}

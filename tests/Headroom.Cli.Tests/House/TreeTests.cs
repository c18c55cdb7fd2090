using System.Text.RegularExpressions;

namespace Headroom.Cli.Tests.House;

public sealed partial class TreeTests
{
    private const int MostLines = 300;

    // Written in pieces, so that this file does not hold what it forbids.
    private static readonly string[] LeftOvers =
        ["TO" + "DO", "FIX" + "ME", "NotImplemented" + "Exception", "/wo" + "rk/", "/ho" + "me/", "/ro" + "ot/"];

    private static readonly Lazy<string[]> Files = new(() => Listed().Where(f => File.Exists(Repository.PathOf(f))).ToArray());

    [Fact]
    public void No_file_holds_a_left_over() => None(
        from file in Files.Value
        let text = File.ReadAllText(Repository.PathOf(file))
        where !text.Contains('\0', StringComparison.Ordinal)
        from leftOver in LeftOvers
        where text.Contains(leftOver, StringComparison.Ordinal)
        select $"{file} holds {leftOver}");

    [Fact]
    public void A_source_file_is_short_enough_to_be_read() => None(
        from file in Sources("src/")
        where !file.EndsWith("Table.cs", StringComparison.Ordinal) && !file.EndsWith("Tables.cs", StringComparison.Ordinal)
        let lines = File.ReadLines(Repository.PathOf(file)).Count()
        where lines > MostLines
        select $"{file} has {lines} lines; {MostLines} are allowed");

    [Fact]
    public void A_file_of_tests_asserts_something() => None(
        from file in Sources("tests/")
        let text = File.ReadAllText(Repository.PathOf(file))
        where TestMark().IsMatch(text) && !Assertion().IsMatch(text)
        select file);

    // A listing that came out empty would let everything above pass.
    [Fact]
    public void The_files_of_the_tree_are_found()
    {
        Assert.Contains("src/Headroom.Cli/Program.cs", Files.Value);
        Assert.Contains("tests/Headroom.Cli.Tests/House/TreeTests.cs", Files.Value);
    }

    // Each finding in full, one a line; a collection assertion would shorten them.
    private static void None(IEnumerable<string> findings) => Assert.Equal("", string.Join('\n', findings));

    private static IEnumerable<string> Sources(string folder) => Files.Value.Where(
        f => f.StartsWith(folder, StringComparison.Ordinal) && f.EndsWith(".cs", StringComparison.Ordinal));

    // Files that git would take but does not hold yet count too: a fault shows before it is committed.
    private static string[] Listed()
    {
        var listing = Run.Process(new ProcessStart("git", "ls-files", "-z", "--cached", "--others", "--exclude-standard"));
        Assert.True(listing.ExitCode == 0, $"git could not list the files: {listing.Err}");
        return listing.Out.Split('\0', StringSplitOptions.RemoveEmptyEntries);
    }

    [GeneratedRegex(@"^\s*\[(Fact|Theory)\b", RegexOptions.Multiline)]
    private static partial Regex TestMark();

    [GeneratedRegex(@"\bAssert\.|\.Sample\(|\bGolden\.Agrees\(")]
    private static partial Regex Assertion();
}

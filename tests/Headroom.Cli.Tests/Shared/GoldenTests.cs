using Xunit.Sdk;

namespace Headroom.Cli.Tests.Shared;

public sealed class GoldenTests : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("golden").FullName;

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Fact]
    public void A_text_agrees_with_the_accepted_file_of_its_project() => Golden.Agrees("sample.txt", "first\r\nsecond\n");

    [Fact]
    public void A_text_not_seen_before_fails_and_is_kept_beside_its_place()
    {
        var failure = Assert.Throws<FailException>(() => Golden.Agrees(folder, "new.txt", "text", accept: false));
        Assert.Contains("Nothing has been accepted yet.", failure.Message, StringComparison.Ordinal);
        Assert.Equal("text", File.ReadAllText(Path.Combine(folder, "new.txt.received")));
        Assert.False(File.Exists(Path.Combine(folder, "new.txt")));
    }

    [Fact]
    public void A_difference_names_both_files_and_the_first_line_that_differs()
    {
        File.WriteAllText(Path.Combine(folder, "old.txt"), "one\ntwo\nthree\n");
        var failure = Assert.Throws<FailException>(() => Golden.Agrees(folder, "old.txt", "one\n2\n3\n", accept: false));
        Assert.Contains("Line 2 differs.\n  expected: \"two\"\n  received: \"2\"", failure.Message, StringComparison.Ordinal);
        Assert.Contains(Path.Combine(folder, "old.txt") + "\n", failure.Message, StringComparison.Ordinal);
        Assert.Contains(Path.Combine(folder, "old.txt.received"), failure.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_accepted_agrees_afterwards_and_leaves_nothing_beside_it()
    {
        Assert.Throws<FailException>(() => Golden.Agrees(folder, "taken.txt", "text\n", accept: false));
        Golden.Agrees(folder, "taken.txt", "text\n", accept: true);
        Golden.Agrees(folder, "taken.txt", "text\r\n", accept: false);
        Assert.Equal([Path.Combine(folder, "taken.txt")], Directory.GetFiles(folder));
    }

    [Fact]
    public void A_text_that_ends_early_differs_where_it_ends() =>
        Assert.Equal("Line 2 differs.\n  expected: \"two\"\n  received: (the text has ended)", Golden.Difference("one\ntwo", "one"));
}

namespace Headroom.Cli.Tests.House;

public sealed class DocumentedOutputRulesTests
{
    [Fact]
    public void A_block_is_found_with_its_mark_and_its_commands()
    {
        string[] page = ["Text", "```console", "$ headroom a", "one", "two", "$ headroom b", "```", "```text", "$ other", "```"];
        var blocks = ConsoleBlock.In(page).ToList();
        Assert.Equal(["console", "text"], blocks.Select(b => b.Mark));
        Assert.Equal([true, false], blocks.Select(b => b.ShowsHeadroom));
        Assert.Equal(2, blocks[0].FirstLine);
        Assert.Equal(["$ headroom a", "$ headroom b"], blocks[0].Exchanges().Select(e => e.Command));
        Assert.Equal([2, 0], blocks[0].Exchanges().Select(e => e.Shown.Length));
    }

    [Theory]
    [InlineData("a b", "a b", true)]
    [InlineData("a b", "a", false)]
    [InlineData("a", "a b", false)]
    [InlineData("a x", "a b", false)]
    [InlineData("... b", "a a b", true)]
    [InlineData("a ...", "a", true)]
    [InlineData("a ... c", "a b b c", true)]
    [InlineData("a ... c", "a b b", false)]
    [InlineData("...", "a b", true)]
    public void Three_dots_stand_for_any_number_of_lines(string shown, string actual, bool agrees) =>
        Assert.Equal(agrees, ShownOutput.Agrees(shown.Split(' '), actual.Split(' ')));

    [Fact]
    public void Quotes_keep_words_together_and_an_empty_word_is_one() =>
        Assert.Equal(["headroom", "a b", "", "x=c d"], ShellWords.Split("headroom 'a b' \"\"  x='c d'"));

    [Theory]
    [InlineData("headroom a | sort")]
    [InlineData("headroom > file")]
    [InlineData("headroom 'a")]
    public void A_command_that_needs_a_shell_is_refused(string command) =>
        Assert.ThrowsAny<Xunit.Sdk.XunitException>(() => ShellWords.Split(command));
}

using Headroom.Cli.Text;

namespace Headroom.Cli.Tests.Text;

public sealed class WordsTests
{
    [Theory]
    [InlineData("it holds", "It holds.")]
    [InlineData("two, if they fit", "Two, if they fit.")]
    [InlineData("ap-1 stays dark", "ap-1 stays dark.")]
    [InlineData("does it?", "Does it?")]
    [InlineData("  it holds. ", "It holds.")]
    [InlineData("", "")]
    public void A_sentence_begins_large_unless_with_a_name_and_has_an_end(string text, string sentence) => Assert.Equal(sentence, Words.Sentence(text));

    [Theory]
    [InlineData("a", "a")]
    [InlineData("a b", "\"a b\"")]
    public void A_word_with_a_space_is_quoted(string word, string typed) => Assert.Equal(typed, Words.Quoted(word));
}

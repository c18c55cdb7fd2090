using Headroom.Domain.Quantities;

namespace Headroom.Domain.Tests.Quantities;

public class SpellingTests
{
    private static readonly string[] Known = ["reception", "kennels", "cupboard"];

    [Theory]
    [InlineData("recepton", "reception")]
    [InlineData("kennles", "kennels")]
    [InlineData("Cupboard", "cupboard")]
    [InlineData("cupboards", "cupboard")]
    [InlineData("attic", null)]
    public void The_nearest_word_is_found_when_it_is_near(string word, string? meant) => Assert.Equal(meant, Spelling.Nearest(word, Known));

    [Fact]
    public void Two_letters_swapped_are_one_slip() => Assert.Equal("ab", Spelling.Nearest("ba", ["xy", "ab"]));

    [Fact]
    public void Of_two_equally_near_the_first_is_taken() => Assert.Equal("sw-1", Spelling.Nearest("sw-3", ["sw-1", "sw-2"]));

    [Fact]
    public void A_word_that_is_known_finds_itself() =>
        Gen.String[Gen.Char['a', 'e'], 1, 8].Array[1, 6].Sample(words => words.All(w => Spelling.Nearest(w, words) == w));

    [Fact]
    public void One_letter_more_is_always_found() =>
        Gen.Select(Gen.String[Gen.Char['a', 'z'], 3, 20], Gen.Char['a', 'z']).Sample((word, more) => Spelling.Nearest(word + more, [word]) == word);
}

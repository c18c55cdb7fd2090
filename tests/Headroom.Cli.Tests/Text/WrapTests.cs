using Headroom.Cli.Text;

namespace Headroom.Cli.Tests.Text;

public sealed class WrapTests
{
    [Theory]
    [InlineData("one two three", 7, "one two|three")]
    [InlineData("one two three", 80, "one two three")]
    [InlineData("", 80, "")]
    [InlineData("  spaces   between  ", 80, "spaces between")]
    [InlineData("asks 361 W and has 320 W", 8, "asks|361 W|and has|320 W")]
    [InlineData("unbreakable", 4, "unbr|eaka|ble")]
    [InlineData("catalogue/injectors.yaml:64:22", 20, "catalogue/|injectors.yaml:64:22")]
    [InlineData("of 100000 W", 7, "of|100000|W")]
    public void Lines_break_at_spaces_but_not_between_a_number_and_its_unit(string text, int width, string lines) =>
        Assert.Equal(lines.Split('|'), Wrap.Lines(text, width));

    [Fact]
    public void Every_line_fits_and_no_word_is_lost() => Gen.Select(Gen.String[Gen.Char[" abW5é語"], 0, 60], Gen.Int[2, 30]).Sample((text, width) =>
    {
        var lines = Wrap.Lines(text, width);
        Assert.All(lines, line => Assert.True(Columns.Of(line) <= width, line));
        Assert.Equal(text.Replace(" ", "", StringComparison.Ordinal), string.Concat(lines).Replace(" ", "", StringComparison.Ordinal));
    });

    [Theory]
    [InlineData("a long name", 8, "a long…")]
    [InlineData("a name", 8, "a name")]
    [InlineData("語語語", 5, "語語…")]
    [InlineData("abc", 1, "a")]
    public void A_text_is_cut_to_a_width_with_a_sign_that_it_was(string text, int width, string cut) => Assert.Equal(cut, Columns.Fit(text, width, "…"));

    [Theory]
    [InlineData("sanderling-12", 10, "-", "sander…-12")]
    [InlineData("volts at the far end, at night", 24, ", ", "volts at the…, at night")]
    [InlineData("short-1", 10, "-", "short-1")]
    [InlineData("nothing to hold on to", 10, "-", "nothing t…")]
    [InlineData("a-very-long-tail, which takes it all", 10, ", ", "a-very-lo…")]
    public void A_name_is_cut_before_what_tells_it_apart(string text, int width, string separator, string cut) =>
        Assert.Equal(cut, Columns.FitMiddle(text, width, "…", separator));

    [Theory]
    [InlineData("abc", 3)]
    [InlineData("e\u0301", 1)]
    [InlineData("語", 2)]
    [InlineData("", 0)]
    public void Columns_are_what_a_terminal_shows(string text, int columns) => Assert.Equal(columns, Columns.Of(text));
}

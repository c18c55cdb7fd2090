using System.Diagnostics;
using System.Text;
using Headroom.JobFiles.Yaml;

namespace Headroom.JobFiles.Tests.Yaml;

public sealed class HostileTextTests
{
    // Each of these takes a second or less; what grows with the square of its length would take hours. So a busy machine does not fail, and a hang does.
    private static readonly TimeSpan Bound = TimeSpan.FromMinutes(3);

    // The parser's own objects are the most of it: some hundred bytes for each character of the densest text, and the guards' own tables.
    private const long BytesForEach = 400;
    private const long AnyWay = 64 * 1024 * 1024;

    [Fact]
    public void Aliases_of_aliases_are_refused_without_walking_them()
    {
        var bomb = new StringBuilder("a0: &a0 [x, x]\n");
        for (var i = 1; i < 30; i++)
            bomb.Append($"a{i}: &a{i} [*a{i - 1}, *a{i - 1}]\n");
        Assert.Contains("FILE012", Codes(bomb.ToString()));
    }

    [Theory]
    [InlineData("[", "")]
    [InlineData("{a: ", "")]
    [InlineData("[", "]")]
    [InlineData("- ", "")]
    [InlineData("? ", "")]
    public void Twenty_thousand_things_in_things_are_refused(string open, string close)
    {
        var text = string.Concat(Enumerable.Repeat(open, 20_000)) + "x" + string.Concat(Enumerable.Repeat(close, 20_000));
        Assert.Equal(["FILE015"], Codes(text));
    }

    [Fact]
    public void More_values_than_anybody_writes_are_refused() =>
        Assert.Equal(["FILE016"], Codes("[" + string.Concat(Enumerable.Repeat("a,", 2_100_000)) + "a]"));

    [Theory]
    [InlineData("a: ", 8_000_000)]
    [InlineData("\"", 8_000_000)]
    [InlineData("a: |\n  ", 8_000_000)]
    [InlineData("#", 8_000_000)]
    public void One_endless_line_is_read_or_refused_in_time(string begin, int length) => Codes(begin + new string('x', length));

    [Theory]
    [InlineData("a\n")]
    [InlineData("a: 1\n")]
    [InlineData("\n")]
    [InlineData("- a\n")]
    [InlineData("? a\n")]
    [InlineData("'")]
    [InlineData("a,")]
    [InlineData(": ")]
    [InlineData("&a ")]
    [InlineData("!a ")]
    [InlineData("a? ")]
    [InlineData(": ? \n")]
    public void A_piece_repeated_to_the_end_is_read_or_refused_in_time(string piece) =>
        Codes(string.Concat(Enumerable.Repeat(piece, 1_000_000 / piece.Length)));

    [Fact]
    public void Whatever_the_characters_reading_ends_with_a_tree_or_a_finding() =>
        Gen.OneOf(Gen.Char.AlphaNumeric, Gen.Char["{}[]:,-?&*!|>'\"%@#\\ \n\t\r"], Gen.Char['\u0000', '\uFFFF'])
            .Array[0, 200]
            .Sample(characters => AnswersInTime(new string(characters)), iter: 20_000);

    [Fact]
    public void Whatever_is_done_to_a_good_text_reading_ends_with_a_tree_or_a_finding() =>
        Gen.Select(Gen.Int[0, Good.Length - 1], Gen.Int[0, 20], Gen.String[Gen.Char["{}[]:,-?&*!|>'\"%\n x"], 0, 4])
            .Sample((at, cut, put) => AnswersInTime(Good[..at] + put + Good[Math.Min(Good.Length, at + cut)..]), iter: 20_000);

    private const string Good = "headroom: 1\nsurvey:\n  spaces:\n    study: {size: 4 x 3 x 2 m, exposed: [front, top]}\n  drops:\n    - K-01: 'x'\n    - \"y\\n\"\ntext: |\n  lines\n  more\n";

    private static bool AnswersInTime(string text)
    {
        var read = YamlText.Parse(text, "f");
        return read.Value is not null || read.Findings.Count > 0;
    }

    private static IEnumerable<string> Codes(string text)
    {
        var watch = Stopwatch.StartNew();
        var before = GC.GetAllocatedBytesForCurrentThread();
        var read = YamlText.Parse(text, "f");
        var spent = GC.GetAllocatedBytesForCurrentThread() - before;
        Assert.True(spent < AnyWay + BytesForEach * text.Length, $"{spent} bytes for {text.Length} characters");
        Assert.True(watch.Elapsed < Bound, $"took {watch.Elapsed}");
        Assert.True(read.Value is not null || read.Findings.Count > 0);
        return read.Findings.Select(finding => finding.Code);
    }
}

using Headroom.JobFiles.Yaml;

namespace Headroom.JobFiles.Tests.Yaml;

public sealed class SyntaxTests
{
    [Theory]
    [InlineData("", "job.yaml: error FILE005: an empty file")]
    [InlineData("# only a remark\n", "job.yaml: error FILE005: an empty file")]
    [InlineData("a: b\0c", "job.yaml:1:5: error FILE009: the control character U+0000")]
    [InlineData("a: 1\nb: \u202Egpj", "job.yaml:2:4: error FILE010: the character U+202E, which cannot be seen")]
    [InlineData("a: x\u200By", "job.yaml:1:5: error FILE010: the character U+200B, which cannot be seen")]
    [InlineData("a: x\u200Dy", "job.yaml:1:5: question FILE010: the joiner U+200D, which cannot be seen")]
    [InlineData("a: \"\\u202E\"", "job.yaml:1:4: error FILE010: the character U+202E, which cannot be seen")]
    [InlineData("a: \"\\e[31m\"", "job.yaml:1:4: error FILE009: the control character U+001B")]
    [InlineData("a: 1\ndrops:\n\t- id\n", "job.yaml:3:1: error FILE011: a tab in front of a line;")]
    [InlineData("a:\n  \tb: 1\n\tc: 2\n", "job.yaml:2:3: error FILE011: a tab in front of this line and of 1 more;")]
    [InlineData("a: &x 1\n", "job.yaml:1:4: error FILE012: the anchor '&x'")]
    [InlineData("a: 1\nb: *x\n", "job.yaml:2:4: error FILE012: the alias '*x'")]
    [InlineData("*x", "job.yaml:1:1: error FILE012: the alias '*x'")]
    [InlineData("b:\n  <<: {a: 1}\n", "job.yaml:2:3: error FILE013: the merge key '<<'")]
    [InlineData("a: !!int 3\n", "job.yaml:1:4: error FILE014: the tag '!!int'")]
    [InlineData("a: 1\n---\nb: 2\n", "job.yaml:2:1: error FILE017: a second document")]
    [InlineData("a: 1\n...\nb: 2\n", "job.yaml:3:1: error FILE017: a second document")]
    [InlineData("a: [1, 2\nb: 3\n", "job.yaml:1:4: error FILE018: a bracket that is not closed;")]
    [InlineData("a: {b: 1\n", "job.yaml:1:4: error FILE018: a bracket that is not closed before line 2, column 1")]
    [InlineData("a: {b: {c: 1}\nd: 2\n", "job.yaml:1:4: error FILE018: a bracket that is not closed;")]
    [InlineData("a: [1, 2}\n", "job.yaml:1:4: error FILE018: a bracket that is not closed before line 1, column 9")]
    [InlineData("{a: 1}}\n", "job.yaml:1:7: error FILE018: something behind the end")]
    [InlineData("a: b: c\n", "job.yaml:1:5: error FILE018: a second ': ' in one value")]
    [InlineData("a: 1\n b: 2\n", "job.yaml:2:3: error FILE018: a second ': ' in one value, or a line deeper")]
    [InlineData("a: 'x\n", "job.yaml:1:4: error FILE018: a quote that is never closed")]
    [InlineData("- a\nb: 1\n", "job.yaml:2:1: error FILE018: a line without a hyphen")]
    [InlineData("a: %x\n", "job.yaml:1:4: error FILE018: a value that begins with a character of YAML's own")]
    [InlineData("a: \"\\q\"\n", "job.yaml:1:4: error FILE018: a backslash that means nothing")]
    [InlineData("a: \"\\x\"", "job.yaml:1:4: error FILE018: a backslash code that is not whole")]
    [InlineData("a: \"\\uD800\"", "job.yaml:1:4: error FILE018: a backslash code that is no character")]
    [InlineData("a: 1\nb\n", "job.yaml:2:1: error FILE018: a line that is no key with a value")]
    [InlineData("key: - x\n", "job.yaml:1:6: error FILE018: a list that begins on the line of its key")]
    [InlineData("a: *\n", "job.yaml:1:4: error FILE018: a value that begins with '*' or '&'")]
    [InlineData("a: [,]\n", "job.yaml:1:5: error FILE018: nothing where a value is expected")]
    [InlineData("%YAML 9.9\n---\na: 1", "job.yaml:1:1: error FILE018: a version of YAML other than 1.2")]
    [InlineData("? [1]\n: 2\n", "job.yaml:1:3: error FILE019: a list as a key")]
    [InlineData("a: 1\nb: !![\n", "job.yaml:2:2: error FILE018: a '!' in front of a value")]
    [InlineData("a: 1\nb: 2\na: 3\n", "job.yaml:3:1: error FILE021: 'a' a second time (first in line 1, column 1)")]
    public void Each_slip_is_named_at_its_place(string text, string begins) =>
        Assert.StartsWith(begins, Assert.Single(YamlText.Parse(text, "job.yaml").Findings).ToString(), StringComparison.Ordinal);

    [Fact]
    public void Slips_that_leave_the_text_readable_are_all_told_in_one_go()
    {
        var read = YamlText.Parse("b: &x {c: 1, c: 2}\na: !tag\n<<: *x\nd: \u200B\n", "job.yaml");
        Assert.NotNull(read.Value);
        Assert.False(read.Ok);
        Assert.Equal(["FILE012", "FILE021", "FILE014", "FILE013", "FILE012", "FILE010"], read.Findings.Select(f => f.Code));
    }

    [Fact]
    public void A_file_full_of_unseen_characters_gives_a_bounded_list()
    {
        var findings = YamlText.Parse("a: " + new string('\u200B', 100_000), "job.yaml").Findings;
        Assert.Equal(51, findings.Count);
        Assert.Equal("FILE020", findings[^1].Code);
    }
}

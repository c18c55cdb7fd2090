using Headroom.JobFiles.Yaml;

namespace Headroom.JobFiles.Tests.Yaml;

public sealed class YamlTreeTests
{
    [Theory]
    [InlineData("a: {b: 1}\nc: 2\n", "a", "{b: 1}")]
    [InlineData("a:\n  b: 1\n  c: [x, y]\n# remark\nd: 2\n", "a", "b: 1\n  c: [x, y]")]
    [InlineData("a:\n  - 1\n  - two words\n\nd: 2\n", "a", "- 1\n  - two words")]
    [InlineData("a: 'quoted'  # remark\n", "a", "'quoted'")]
    [InlineData("a: |\n  lines\n  more\n\nb: 2\n", "a", "|\n  lines\n  more")]
    [InlineData("a:\nb: 2\n", "a", "")]
    [InlineData("😀: 1\nb: ä ö\n", "b", "ä ö")]
    public void A_node_knows_the_stretch_of_text_it_was_read_from(string text, string key, string stretch)
    {
        var node = Value(text, key);
        Assert.Equal(stretch, text[node.Start..node.End]);
    }

    [Theory]
    [InlineData("a: 1\nb: 2\n")]
    [InlineData("\uFEFFa: 1\nb: 2\n")]
    [InlineData("a: 1\r\nb: 2\r\n")]
    [InlineData("\uFEFFa: 1\r\nb: 2")]
    public void Byte_order_mark_and_ends_of_line_leave_the_places_right(string text)
    {
        var node = Value(text, "b");
        Assert.Equal("job.yaml:2:4", node.At.ToString());
        Assert.Equal("2", text[node.Start..node.End]);
    }

    [Theory]
    [InlineData("a: ?\nb: 1")]
    [InlineData("a: ? # not measured\nb: 1")]
    [InlineData("{a: ?, b: 1}")]
    [InlineData("{a: ? , b: 1}")]
    [InlineData("a: unknown\nb: 1")]
    public void A_question_mark_and_the_word_unknown_say_that_nobody_knows(string text)
    {
        var node = Assert.IsType<YamlScalar>(Value(text, "a"));
        Assert.True(node.IsUnknown);
        Assert.Equal("1", Assert.IsType<YamlScalar>(Value(text, "b")).Text);
    }

    [Fact]
    public void In_a_list_a_question_mark_says_so_too() => Assert.All(
        Assert.IsType<YamlList>(Value("a: [?, ? , ? ]", "a")).Items, item => Assert.True(((YamlScalar)item).IsUnknown));

    [Theory]
    [InlineData("a: 'why, who: ? '", "why, who: ? ")]
    [InlineData("a: is it so?", "is it so?")]
    [InlineData("a: |\n  who: ?\n", "who: ?\n")]
    public void A_question_mark_inside_a_text_stays(string text, string value) =>
        Assert.Equal(value, Assert.IsType<YamlScalar>(Value(text, "a")).Text);

    [Theory]
    [InlineData("a: 1", YamlStyle.Plain)]
    [InlineData("a: '1'", YamlStyle.Quoted)]
    [InlineData("a: \"1\"", YamlStyle.Quoted)]
    [InlineData("a: >-\n  1", YamlStyle.Block)]
    public void The_way_of_writing_is_kept(string text, YamlStyle style)
    {
        var scalar = Assert.IsType<YamlScalar>(Value(text, "a"));
        Assert.Equal(("1", style), (scalar.Text, scalar.Style));
    }

    [Fact]
    public void A_hyphen_in_a_key_is_as_good_as_a_space()
    {
        var map = Assert.IsType<YamlMap>(YamlText.Parse("plugs-behind: 1", "f").Value);
        Assert.NotNull(map.Find("plugs behind"));
        Assert.Null(map.Find("plugs_behind"));
    }

    [Fact]
    public void A_pair_inside_a_list_has_its_place()
    {
        var list = Assert.IsType<YamlList>(Value("a: [b: 1, c: 2]", "a"));
        Assert.Equal(["f:1:5", "f:1:11"], list.Items.Select(item => item.At.ToString().Replace("job.yaml", "f", StringComparison.Ordinal)));
    }

    private static YamlNode Value(string text, string key)
    {
        var read = YamlText.Parse(text, "job.yaml");
        Assert.Empty(read.Findings);
        return Assert.IsType<YamlMap>(read.Value).Find(key)!.Value;
    }
}

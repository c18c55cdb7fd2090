using Headroom.Domain.Findings;
using Headroom.Domain.Jobs;
using Headroom.JobFiles.Editing;
using Headroom.JobFiles.Yaml;

namespace Headroom.JobFiles.Tests.Editing;

public class JobFileEditorTests
{
    private static readonly Overruling Allowed = new("cabling/K-09/length", "tester record 31, all margins kept", "J. Marsh", new(2026, 11, 15), Place.None);

    private static readonly Reading Watts = new(
        "watts", "sw-1/5", 6.4, "W", null, "6.4 W", "class 2: meter", false, true, new(2026, 11, 14), null, 38.9, 0.1, null, null, "1-2", Place.None);

    private const string WattsLine =
        "{what: watts, at: sw-1/5, value: 6.4 W, with: \"class 2: meter\", calibrated: no, at most: yes, on: 2026-11-14, background: 38.9 dB(A), distance: 0.1 m, pair: 1-2}";

    private const string AllowedLine =
        "{entry: cabling/K-09/length, because: \"tester record 31, all margins kept\", by: J. Marsh, on: 2026-11-15}";

    public static TheoryData<string> Cases => [.. DesignCases.Rows.Keys];

    [Theory, MemberData(nameof(Cases))]
    public void A_design_is_put_in(string name)
    {
        var (id, before, after) = DesignCases.Rows[name];
        var edit = JobFileEditor.PutDesign(before, id, DesignCases.Yaml);
        Assert.Empty(edit.Findings);
        Assert.Equal(after, edit.Text);
    }

    [Theory, MemberData(nameof(Cases))]
    public void A_design_put_in_twice_is_there_once(string name)
    {
        var (id, _, after) = DesignCases.Rows[name];
        Assert.Equal(after, JobFileEditor.PutDesign(after, id, DesignCases.Yaml).Text);
    }

    [Theory]
    [InlineData("job: x\n", "job: x\n\nreadings:\n  - @\n")]
    [InlineData("readings: []  # none\n", "readings:  # none\n  - @\n")]
    [InlineData("readings:\n", "readings:\n  - @\n")]
    [InlineData("readings: [{what: ohms}]\n", "readings: [{what: ohms}, @]\n")]
    [InlineData("readings:\n- what: ohms\n  at: x # here\n\noverrulings: []\n", "readings:\n- what: ohms\n  at: x # here\n- @\n\noverrulings: []\n")]
    [InlineData("readings:\n    - {what: ohms}\n      # on the roof\n", "readings:\n    - {what: ohms}\n      # on the roof\n    - @\n")]
    [InlineData("job: x\noverrulings: []", "job: x\n\nreadings:\n  - @\noverrulings: []")]
    public void A_reading_is_put_behind_the_others(string before, string after)
    {
        var edit = JobFileEditor.AddReading(before, Watts);
        Assert.Empty(edit.Findings);
        Assert.Equal(after.Replace("@", WattsLine, StringComparison.Ordinal), edit.Text);
    }

    [Theory]
    [InlineData("job: x\n", "job: x\n\noverrulings:\n  - @\n")]
    [InlineData("overrulings:\n  - {entry: a/b/c}\n", "overrulings:\n  - {entry: a/b/c}\n  - @\n")]
    [InlineData(
        "overrulings:\n  - {entry: a/b/c}\n  - entry: cabling/K-09/length\n    because: so\n  # and\n  - {entry: d}\n",
        "overrulings:\n  - {entry: a/b/c}\n  - @\n  # and\n  - {entry: d}\n")]
    [InlineData("overrulings: [{entry: a}, {entry: cabling/K-09/length, by: me} ]\n", "overrulings: [{entry: a}, @ ]\n")]
    public void An_overruling_is_put_in_or_replaces_that_of_the_same_entry(string before, string after)
    {
        var edit = JobFileEditor.AddOverruling(before, Allowed);
        Assert.Empty(edit.Findings);
        Assert.Equal(after.Replace("@", AllowedLine, StringComparison.Ordinal), edit.Text);
    }

    [Theory]
    [InlineData("designs: 5\n", "EDT002")]
    [InlineData("designs: [a]\n", "EDT002")]
    [InlineData("- a\n- b\n", "EDT001")]
    [InlineData("designs: {a: {like: b}\n", "FILE018")]
    [InlineData("designs:\n  a: {like: b}\n  a: {like: c}\n", "FILE021")]
    [InlineData("designs:\n  ? a\n  : {like: b}\n", "EDT004")]
    [InlineData("job: |+\n  blank lines below are kept\n\n\nreadings: []\n", "EDT004")]
    [InlineData("", "FILE005")]
    public void A_text_that_cannot_be_edited_safely_is_refused(string text, string code)
    {
        var edit = JobFileEditor.PutDesign(text, "a", DesignCases.Yaml);
        Assert.Null(edit.Text);
        var found = Assert.Single(edit.Findings);
        Assert.Equal((code, Severity.Error), (found.Code, found.Severity));
    }

    [Theory]
    [InlineData("[a]")]
    [InlineData("like: a: b")]
    [InlineData("")]
    public void What_is_no_design_is_refused(string yaml)
    {
        var edit = JobFileEditor.PutDesign("job: x\n", "a", yaml);
        Assert.Null(edit.Text);
        Assert.Contains(edit.Findings, f => f.Code == "EDT003");
    }

    [Fact]
    public void A_text_of_another_kind_under_readings_is_refused() =>
        Assert.Equal("EDT002", Assert.Single(JobFileEditor.AddReading("readings: {a: b}\n", Watts).Findings).Code);

    [Theory]
    [InlineData("{like: a, patch: {K-01: sw-1/2}}", "  b: {like: a, patch: {K-01: sw-1/2}}\n")]
    [InlineData("    like: a\n\n    switches:\n      s: {why: |-\n        two}\n", null)]
    [InlineData("    like: a\n\n    switches:\n      s:\n        why: |\n          two\n           words\n", "  b:\n    like: a\n\n    switches:\n      s:\n        why: |\n          two\n           words\n")]
    [InlineData("---\nlike: a\nwhy: |\n  two\n  words\n", "  b: {like: a, why: \"two\\nwords\\n\"}\n")]
    public void A_design_keeps_the_layout_it_comes_with(string yaml, string? written)
    {
        const string before = "designs:\n  a: {like: c}\n";
        Assert.Equal(written is null ? null : before + written, JobFileEditor.PutDesign(before, "b", yaml).Text);
    }

    [Theory]
    [InlineData("because: of that # and this")]
    [InlineData("yes")]
    [InlineData("12")]
    [InlineData("- a")]
    [InlineData("two\nlines \"and\" a \\ tab\t.")]
    [InlineData(" spaced ")]
    [InlineData("{braces}")]
    [InlineData("?")]
    [InlineData("")]
    public void Any_words_of_a_person_are_read_back_as_they_were(string because)
    {
        var edit = JobFileEditor.AddOverruling("job: x\n", Allowed with { Because = because });
        var item = (YamlMap)((YamlList)((YamlMap)YamlText.Parse(edit.Text!, "").Value!).Find("overrulings")!.Value).Items[0];
        var read = Assert.IsType<YamlScalar>(item.Find("because")!.Value);
        Assert.Equal((because, false, false), (read.Text, read.IsEmpty, read.IsUnknown));
    }

    [Fact]
    public void Any_text_at_all_is_read_back_or_refused() => Gen.String.Sample(text =>
    {
        var node = YamlText.Parse($"a: {YamlWriter.Text(text)}\n", "");
        return !node.Ok || ((YamlMap)node.Value!).Find("a")!.Value is YamlScalar read && read.Text == text;
    });

    [Fact]
    public void A_text_of_letters_and_yaml_marks_is_always_read_back() => Gen.String[Gen.Char["ab01 :#-?,[]{}&*!|>'\"%@`~=<\n\t\\ä"], 0, 12].Sample(text =>
    {
        var list = (YamlList)YamlText.Parse($"[{YamlWriter.Text(text)}, {{{YamlWriter.Text(text)}: b}}]", "").Value!;
        return list.Items[0] is YamlScalar { IsEmpty: false, IsUnknown: false } read && read.Text == text
            && ((YamlMap)list.Items[1]).Entries[0].Key.Text == text;
    });
}

using Headroom.JobFiles.Changes;

namespace Headroom.JobFiles.Tests.Changes;

public sealed class JobChangesTests
{
    private static readonly string[] Examples = ["barn-vets", "one-desk", "print-shop"];

    private static string Text(string example) => File.ReadAllText(Repository.PathOf($"examples/{example}/job.yaml"));

    public static TheoryData<string> All => [.. Examples];

    [Fact]
    public void A_changed_field_is_told_in_words_and_remarks_are_no_change()
    {
        var before = Text("barn-vets");
        var after = before.Replace("K-01: {from: cupboard, to: reception, length: 14 m", "K-01: {from: cupboard, to: reception, length: 15 m", StringComparison.Ordinal).Replace("# beams", "# old beams", StringComparison.Ordinal);
        Assert.Equal("length of K-01 of drops: 15 m, was 14 m", Assert.Single(JobChanges.Between(before, after)!).InWords);
        Assert.Empty(JobChanges.Between(before, before.Replace("# beams", "# old beams", StringComparison.Ordinal))!);
    }

    [Fact]
    public void Readings_are_put_in_and_taken_out_one_by_one()
    {
        const string head = "headroom: 1\njob: x\nreadings:\n";
        const string one = "  - {what: watts, at: a, value: 1 W}\n", two = "  - {what: watts, at: b, value: 2 W}\n";
        Assert.Equal([new([.. Rows], null, "{what: watts, at: b, value: 2 W}")], JobChanges.Between(head + one, head + one + two)!, Same);
        Assert.Equal([new([.. Rows], "{what: watts, at: a, value: 1 W}", null)], JobChanges.Between(head + one + two, head + two)!, Same);
    }

    // Every cell of every table changed, one at a time: the text differs in that field and in nothing else, and back again it is the same text but for layout.
    [Theory, MemberData(nameof(All))]
    public void Every_cell_can_be_changed_and_changed_back(string example)
    {
        var text = Text(example);
        foreach (var change in Cells(text).Where((_, at) => Long.On || at % 3 == 0))
        {
            var edited = JobFieldEditor.Put(text, [change]);
            Assert.True(edited.Text is not null, $"{change.InWords}: {string.Join("; ", edited.Findings)}");
            Assert.Equal([change], JobChanges.Between(text, edited.Text!)!, Same);
            var back = JobFieldEditor.Put(edited.Text!, [new(change.Path, change.After, change.Before)]);
            Assert.Empty(JobChanges.Between(text, back.Text!)!);
            Assert.Equal(Remarks(text), Remarks(edited.Text!));
        }
    }

    [Theory, MemberData(nameof(All))]
    public void Every_cell_can_be_taken_out_and_put_in_again(string example)
    {
        var text = Text(example);
        foreach (var cell in Cells(text).Where((_, at) => at % 5 == 0))
        {
            var without = JobFieldEditor.Put(text, [cell with { After = null }]).Text;
            Assert.True(without is not null, cell.InWords);
            var again = JobFieldEditor.Put(without, [new(cell.Path, null, cell.Before)]).Text;
            Assert.True(again is not null, cell.InWords);
            Assert.DoesNotContain(JobChanges.Between(text, again)!, change => !change.Path.Take(3).SequenceEqual(cell.Path.Take(3)));
        }
    }

    [Fact]
    public void Rows_and_sections_are_put_in_where_there_were_none()
    {
        const string text = "headroom: 1\njob: x   # remark\n";
        var edited = JobFieldEditor.Put(text, [new(["survey", "drops", "K-1"], null, "{from: a, to: b}"), new(["survey", "drops", "K-2", "length"], null, "3 m"), new([.. Rows], null, "{what: watts, at: a, value: 1 W}")]);
        Assert.NotNull(edited.Text);
        Assert.StartsWith("headroom: 1\njob: x   # remark\n", edited.Text, StringComparison.Ordinal);
        Assert.Equal(["K-1 of drops", "length of K-2 of drops"], JobChanges.Between("headroom: 1\njob: x\nsurvey: {drops: {K-2: {a: b}, z: y}}", edited.Text)!.Where(change => change.Path[0] == "survey" && change.After is not null).Select(change => change.Name).Order());
    }

    [Fact]
    public void Changes_of_different_fields_are_both_kept_with_the_remarks_of_the_one_who_saved_first()
    {
        var text = Text("barn-vets");
        var mine = Put(text, new(["survey", "drops", "K-01", "length"], "14 m", "15 m"), new([.. Rows], null, "{what: watts, at: sw-1/1, value: 3 W}"));
        var theirs = Put(text, new(["survey", "drops", "K-01", "cable"], "cat6-23", "cat6a-23"), new([.. Rows], null, "{what: watts, at: sw-1/2, value: 4 W}")).Replace("# beams", "# theirs", StringComparison.Ordinal);
        var merged = JobMerge.Merge(text, mine, theirs);
        Assert.Empty(merged.Conflicts);
        Assert.Contains("K-01: {from: cupboard, to: reception, length: 15 m, cable: cat6a-23", merged.Text, StringComparison.Ordinal);
        Assert.Contains("# theirs", merged.Text, StringComparison.Ordinal);
        Assert.Contains("at: sw-1/1, value: 3 W", merged.Text, StringComparison.Ordinal);
        Assert.Contains("at: sw-1/2, value: 4 W", merged.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_field_that_both_changed_is_a_conflict_unless_both_say_the_same()
    {
        var text = Text("barn-vets");
        FieldChange Length(string to) => new(["survey", "drops", "K-01", "length"], "14 m", to);
        var clash = JobMerge.Merge(text, Put(text, Length("15 m")), Put(text, Length("16 m")));
        Assert.Null(clash.Text);
        Assert.Equal(("15 m", "16 m"), (Assert.Single(clash.Conflicts).Mine.After, clash.Conflicts[0].Theirs.After));
        Assert.NotNull(JobMerge.Merge(text, Put(text, Length("15 m")), Put(text, Length("15 m"))).Text);
        var gone = JobMerge.Merge(text, Put(text, Length("15 m")), Put(text, new FieldChange(["survey", "drops", "K-01"], "x", null)));
        Assert.Single(gone.Conflicts);
    }

    // Any two sets of changed cells: what is merged holds exactly both, or there is a field that both changed.
    [Fact]
    public void Whatever_two_people_change_nothing_is_lost()
    {
        var text = Text("one-desk") + "\nreadings:\n  - {what: watts, at: sw-1/1, value: 3 W}\n";
        var cells = Cells(Text("barn-vets")).ToList();
        text = Text("barn-vets");
        Gen.Select(Gen.Int[0, cells.Count - 1].Array[1, 4], Gen.Int[0, cells.Count - 1].Array[1, 4]).Sample(
            both =>
            {
                FieldChange[] my = [.. both.Item1.Distinct().Select(at => cells[at])], their = [.. both.Item2.Distinct().Select(at => cells[at] with { After = cells[at].After + "b" })];
                var merged = JobMerge.Merge(text, Put(text, my), Put(text, their));
                if (my.Any(change => their.Any(change.Touches)))
                    Assert.NotEmpty(merged.Conflicts);
                else
                    Assert.Equal(my.Concat(their).Select(change => change.InWords).Order(), JobChanges.Between(text, merged.Text!)!.Select(change => change.InWords).Order());
            },
            iter: Long.Samples(400),
            threads: 1);
    }

    [Fact]
    public void A_finding_leads_to_the_cell_it_is_about()
    {
        var text = Put(Text("barn-vets"), new FieldChange(["survey", "drops", "K-05", "length"], "22.5 m", "22.5 W"));
        var finding = Assert.Single(JobFile.Parse(text, "job.yaml", null).Findings);
        Assert.Equal(["survey", "drops", "K-05", "length"], new JobOutline(text).PathAt(finding.At));
    }

    [Theory, InlineData("31 m", "31 m"), InlineData(" yes ", "yes"), InlineData("{length: 3 m,  by: x}", "{length: 3 m, by: x}"), InlineData("a: b", "\"a: b\""), InlineData("[a, b]", "[a, b]"), InlineData("", null), InlineData("# no", "\"# no\"")]
    public void What_is_typed_becomes_one_value(string typed, string? written) => Assert.Equal(written, FieldText.Of(typed).Value);

    [Theory, InlineData("{a: 1"), InlineData("[a"), InlineData("\"a"), InlineData("{a: 1}\nb: 2"), InlineData("[a] b")]
    public void What_is_no_value_is_refused(string typed) => Assert.Equal("EDT005", Assert.Single(FieldText.Of(typed).Findings).Code);

    [Fact]
    public void The_sheets_that_a_job_names_are_told_without_those_elsewhere() =>
        Assert.Equal(["drops.csv", "in/it.csv"], JobFile.SheetsOf("headroom: 1\njob: x\nsheets:\n  - {file: drops.csv, as: drops}\n  - {file: in/it.csv, as: prices}\n  - {file: ../up.csv, as: drops}\n"));

    private static readonly string[] Rows = ["readings", FieldChange.Item];

    private static readonly Func<FieldChange, FieldChange, bool> Same = (left, right) => left.SameAs(right);

    private static string Put(string text, params FieldChange[] changes)
    {
        var edited = JobFieldEditor.Put(text, changes);
        Assert.True(edited.Text is not null, string.Join("; ", edited.Findings));
        return edited.Text;
    }

    private static IEnumerable<FieldChange> Cells(string text) =>
        from part in JobTable.Parts
        let table = JobTable.Of(text, part)
        from row in table.Rows
        from cell in row.Cells
        select new FieldChange([.. table.Path, row.Name, cell.Key], cell.Value, "changed");

    private static List<string> Remarks(string text) => [.. text.Split('\n').Where(line => line.Contains('#')).Select(line => line[line.IndexOf('#')..])];
}

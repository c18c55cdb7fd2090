using Headroom.Documents.Canvas;
using Headroom.Documents.Layout;
using Headroom.Documents.Letters;
using Headroom.Documents.Papers;

namespace Headroom.Documents.Tests.Layout;

public sealed class LayoutTests
{
    public static TheoryData<string, string, string> EveryPaper
    {
        get
        {
            var data = new TheoryData<string, string, string>();
            foreach (var example in new[] { "barn-vets", "one-desk", "school-wings", "strange-names" })
            {
                foreach (var kind in PaperList.All)
                {
                    data.Add(example, kind.Id, "A4");
                    data.Add(example, kind.Id, "Letter");
                }
            }

            return data;
        }
    }

    [Theory, MemberData(nameof(EveryPaper))]
    public void Everything_stands_inside_its_sheet_and_nothing_over_another(string example, string id, string size)
    {
        if (PaperList.Find(id)!.Of(Inputs.Of(example)) is not { } paper)
            return;
        foreach (var (sheet, number) in Layouter.Lay(paper, SheetSize.All.Single(one => one.Name == size)).Select((sheet, i) => (sheet, i + 1)))
        {
            var inside = new Box(0, 0, sheet.Size.Width, sheet.Size.Height).Inset(Layouter.Margin / 2);
            Assert.All(sheet.Items, item => Assert.True(inside.Holds(item.Box), $"{id} sheet {number}: '{item.Text}' stands at {item.Box}"));
            Overlaps(sheet, $"{id} sheet {number}");
        }
    }

    [Theory]
    [InlineData("A4"), InlineData("Letter")]
    public void What_is_left_of_every_limit_and_the_review_of_a_month_are_one_sheet_each(string size) => Assert.All(
        from example in new[] { "barn-vets", "one-desk", "school-wings" } from id in new[] { "limits", "monthly-review" } select (example, id),
        one => Assert.Single(Layouter.Lay(PaperList.Find(one.id)!.Of(Inputs.Of(one.example))!, SheetSize.All.Single(its => its.Name == size))));

    [Fact]
    public void Signs_that_the_letters_lack_stand_as_codes_and_the_paper_says_so()
    {
        var texts = Layouter.Lay(PaperList.Find("patch-schedule")!.Of(StrangeNames.Input)!, SheetSize.A4).SelectMany(sheet => sheet.Items.Select(item => item.Text)).ToList();
        Assert.Contains(texts, text => text.StartsWith("Signs that the letters of this paper lack", StringComparison.Ordinal));
        Assert.Contains("[U+05E9]", Typeface.Of(Face.Plain).Written(StrangeNames.Hebrew), StringComparison.Ordinal);
        Assert.DoesNotContain(Layouter.Lay(PaperList.Find("patch-schedule")!.Of(Inputs.Of("barn-vets"))!, SheetSize.A4).SelectMany(sheet => sheet.Items), item => item.Text.Contains("lack", StringComparison.Ordinal));
    }

    [Fact]
    public void A_row_is_never_split_and_the_head_of_its_table_stands_on_every_sheet()
    {
        var rows = Enumerable.Range(1, 200).Select(i => Row.Of($"row {i}", string.Join(' ', Enumerable.Repeat("word", i % 40)))).ToList();
        var sheets = Layouter.Lay(new Paper("p", "A table", [new Table([new("first"), new("second")], rows)]), SheetSize.A4);
        Assert.True(sheets.Count > 3);
        Assert.All(sheets, sheet => Assert.Contains(sheet.Items, item => item.Text == "first"));
        foreach (var sheet in sheets)
        {
            var words = sheet.Items.Where(item => item.Text.StartsWith("word", StringComparison.Ordinal)).Sum(item => item.Text.Split(' ').Length);
            var wanted = sheet.Items.Where(item => item.Text.StartsWith("row ", StringComparison.Ordinal)).Sum(item => int.Parse(item.Text[4..], System.Globalization.CultureInfo.InvariantCulture) % 40);
            Assert.Equal(wanted, words);
        }
    }

    [Fact]
    public void A_heading_never_ends_a_sheet()
    {
        var blocks = Enumerable.Range(1, 120).SelectMany(i => new Block[] { new Heading($"Heading {i}"), new Words(string.Join(' ', Enumerable.Repeat("word", 7 * i % 50 + 1))) }).ToList();
        foreach (var sheet in Layouter.Lay(new Paper("p", "Headings", blocks), SheetSize.Letter))
        {
            var last = sheet.Items.Where(item => item.Text.Length > 0 && item.Box.Bottom < sheet.Size.Height - 60).MaxBy(item => item.Box.Bottom)!;
            Assert.False(last.Text.StartsWith("Heading", StringComparison.Ordinal), last.Text);
        }
    }

    [Fact]
    public void No_line_is_wider_than_its_column_whatever_is_written()
    {
        Gen.String[0, 300].Sample(text =>
        {
            foreach (var line in TextWrap.Lines(text, Lettering.Cell, 60))
                Assert.True(line.Length <= 2 || Typeface.Width(line.TrimEnd(), Lettering.Cell) <= 60.02, line);
        });
    }

    [Fact]
    public void Breaking_a_text_into_lines_loses_no_letter()
    {
        Gen.String[Gen.Char["abcdefgh  /-12 "], 0, 200].Sample(text =>
        {
            var lines = TextWrap.Lines(text, Lettering.Body, 80);
            Assert.Equal(text.Replace(" ", "", StringComparison.Ordinal), string.Concat(lines).Replace(" ", "", StringComparison.Ordinal));
        });
    }

    private static void Overlaps(LaidSheet sheet, string where)
    {
        var texts = sheet.Items.Where(item => item.Text.Length > 0).OrderBy(item => item.Box.Y).ToList();
        for (var i = 0; i < texts.Count; i++)
        {
            for (var j = i + 1; j < texts.Count && texts[j].Box.Y < texts[i].Box.Bottom; j++)
                Assert.False(texts[i].Box.Overlaps(texts[j].Box), $"{where}: '{texts[i].Text}' and '{texts[j].Text}'");
        }
    }

    private static class Inputs
    {
        private static readonly System.Collections.Concurrent.ConcurrentDictionary<string, PaperInput> Read = [];

        public static PaperInput Of(string example) => Read.GetOrAdd(example, name => name == "strange-names" ? StrangeNames.Input : Studied.Example(name));
    }
}

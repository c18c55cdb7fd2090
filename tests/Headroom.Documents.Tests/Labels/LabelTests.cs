using Headroom.Documents.Labels;
using Headroom.Documents.Layout;
using Headroom.Documents.Papers;
using Headroom.Domain.Firms;

namespace Headroom.Documents.Tests.Labels;

public sealed class LabelTests
{
    private static readonly PaperInput Barn = Studied.Example("barn-vets");

    public static TheoryData<string> Stocks => [.. LabelStock.Common.Select(stock => stock.Name)];

    // Names of every length that a job may have, with and without places to break.
    private static readonly IReadOnlyList<LabelText> Long =
    [
        .. from length in new[] { 1, 4, 9, 17, 33, 64 } from kind in LabelPlan.Kinds from unit in new[] { "W", "ab-", "i1 ." }
           select new LabelText(kind, string.Concat(Enumerable.Repeat(unit, length))[..length].Trim(' ', '-', '.') + "x", ["to the room behind the stairs", "10.61.0.2"]),
    ];

    [Theory, MemberData(nameof(Stocks))]
    public void Everything_lies_inside_its_label_and_nothing_over_another(string name)
    {
        var stock = Stock(name);
        foreach (var ends in LabelPlan.WaysOfEnds)
        {
            var plan = new LabelPlan(stock) { Ends = ends };
            var (sheets, _) = LabelSheets.Lay(Long, plan);
            foreach (var sheet in sheets)
            {
                var labels = stock.IsStrip ? [new Canvas.Box(0, 0, sheet.Size.Width, sheet.Size.Height)] : Enumerable.Range(0, stock.Columns * stock.Rows).Select(place => LabelSheets.BoxOf(plan, place)).ToList();
                Assert.All(sheet.Items, item => Assert.True(labels.Exists(label => label.Inset(-0.02).Holds(item.Box)), $"{name}: '{item.Text}' at {item.Box}"));
                for (var i = 0; i < sheet.Items.Count; i++)
                {
                    for (var j = 0; j < i; j++)
                        Assert.False(sheet.Items[i].Box.Inset(0.02).Overlaps(sheet.Items[j].Box), $"{name}: '{sheet.Items[i].Text}' over '{sheet.Items[j].Text}'");
                }
            }
        }
    }

    [Theory, MemberData(nameof(Stocks))]
    public void A_name_is_whole_on_its_label_or_the_label_is_refused_by_name(string name)
    {
        foreach (var text in Long)
        {
            var (sheets, misfits) = LabelSheets.Lay([text], new LabelPlan(Stock(name)));
            var times = text.Kind == "cables" ? 3 : 1;
            if (misfits.Count > 0)
            {
                Assert.Equal([text.Id], misfits);
                continue;
            }

            var strong = string.Concat(sheets[0].Items.Select(item => item.Text).Where(line => !text.Also.Any(also => also.Contains(line, StringComparison.Ordinal)) || text.Id.Contains(line, StringComparison.Ordinal)));
            Assert.Contains(Plain(string.Concat(Enumerable.Repeat(text.Id, times))), Plain(strong), StringComparison.Ordinal);
        }
    }

    [Fact]
    public void Names_of_a_job_as_long_as_it_allows_fit_on_every_usual_sheet_but_the_smallest()
    {
        var texts = LabelPlan.Kinds.Select(kind => new LabelText(kind, new string('W', 64), [])).ToList();
        foreach (var stock in LabelStock.Common.Where(stock => !stock.IsStrip))
            Assert.Equal(stock.Height < 0.022, LabelSheets.Lay(texts, new LabelPlan(stock)).Misfits.Count > 0);
    }

    [Fact]
    public void What_stands_on_labels_is_letter_for_letter_what_stands_in_the_schedules()
    {
        var cabling = Texts(PaperPack.Write(Barn, [PaperList.Find("cabling-schedule")!], SheetSize.A4).Papers[0].Bytes);
        var labels = LabelTexts.Of(Barn, ["ports", "cables"]);
        Assert.Equal(4 * Barn.Job.Survey.Drops.Count, labels.Count);
        Assert.Equal(Barn.Job.Survey.Drops.Select(drop => drop.Id).Order(), labels.Select(label => label.Id).Distinct().Order());
        Assert.All(labels, label => Assert.Contains(label.Id, cabling, StringComparison.Ordinal));
    }

    [Fact]
    public void A_sheet_used_in_part_begins_at_the_label_that_is_left()
    {
        var plan = new LabelPlan(Stock("a4-3x7")) { First = 20, Of = ["ports"] };
        var (sheets, _) = LabelSheets.Lay([new("ports", "A", []), new("ports", "B", []), new("ports", "C", [])], plan);
        Assert.Equal(2, sheets.Count);
        Assert.Equal([("A", 19), ("B", 20)], sheets[0].Items.Select(item => (item.Text, Place(plan, item))));
        Assert.Equal([("C", 0)], sheets[1].Items.Select(item => (item.Text, Place(plan, item))));
    }

    [Fact]
    public void The_same_labels_are_the_same_bytes()
    {
        var plan = new LabelPlan(Stock("a4-3x8"));
        Assert.Equal(LabelSheets.Write(Barn, plan).Bytes!.Value.ToArray(), LabelSheets.Write(Barn, plan).Bytes!.Value.ToArray());
    }

    private static int Place(LabelPlan plan, Placed item) => Enumerable.Range(0, plan.Stock.Columns * plan.Stock.Rows).Single(place => LabelSheets.BoxOf(plan, place).Holds(item.Box));

    private static LabelStock Stock(string name) => LabelStock.Common.Single(stock => stock.Name == name);

    private static string Plain(string text) => text.Replace(" ", "", StringComparison.Ordinal);

    private static string Texts(ReadOnlyMemory<byte> pdf)
    {
        using var read = UglyToad.PdfPig.PdfDocument.Open(pdf.ToArray());
        return string.Concat(read.GetPages().SelectMany(page => page.Letters).Select(letter => letter.Value));
    }
}

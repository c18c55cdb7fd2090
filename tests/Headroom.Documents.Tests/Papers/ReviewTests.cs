using Headroom.Documents.Layout;
using Headroom.Documents.Papers;
using Headroom.Documents.Tests.Drawings;
using UglyToad.PdfPig;

namespace Headroom.Documents.Tests.Papers;

public sealed class ReviewTests
{
    private static readonly PaperInput Barn = Studied.Example("barn-vets");

    [Fact]
    public void The_review_of_a_folder_tells_of_every_job_and_says_on_every_sheet_that_it_is_inside()
    {
        var review = FolderReview.Write(
            [ReviewedJob.Of("barn", Barn), ReviewedJob.Of("desk", Studied.Example("one-desk")), new ReviewedJob("attic") { NotWorked = "3 errors" }], ("jobs", Barn.Ledger.On), null, SheetSize.A4);
        Assert.Equal("inside-monthly-review.pdf", review.Name);
        using var read = PdfDocument.Open(review.Bytes.ToArray());
        Assert.All(read.GetPages(), page => Assert.Contains("inside,notfortheclient", Text(page), StringComparison.Ordinal));
        var text = string.Concat(read.GetPages().Select(Text));
        var money = Barn.Results.Money!;
        var margin = Domain.Shown.Numbers.Show(Math.Round(100 * (double)money.Margin!.Value, 1), "%").Replace(" ", "", StringComparison.Ordinal);
        Assert.All(new[] { "2of3jobs", "barnas-offered", "desktoday", "attic3errors", margin, string.Concat(QuotationLines.Amount(money.Offer.Net, money.Offer.Terms).Where(letter => !char.IsWhiteSpace(letter))) }, told => Assert.Contains(told, text, StringComparison.Ordinal));
        Assert.Equal(review.Bytes.ToArray(), FolderReview.Write([ReviewedJob.Of("barn", Barn), ReviewedJob.Of("desk", Studied.Example("one-desk")), new ReviewedJob("attic") { NotWorked = "3 errors" }], ("jobs", Barn.Ledger.On), null, SheetSize.A4).Bytes.ToArray());
    }

    // Plan and turning points by hand; the planner itself is tested where it is.
    [Fact]
    public void Why_a_design_was_chosen_stands_on_a_paper_for_the_firm_alone_once_something_was_planned()
    {
        var kind = PaperList.Find("design-choice")!;
        Assert.Equal("inside", kind.For);
        Assert.Equal("design-choice", Assert.Single(PaperPack.Write(Barn, [kind], SheetSize.A4).Missing).Id);
        var written = PaperPack.Write(PlannedDrawings.Of(Barn), [kind], SheetSize.A4).Papers[0];
        using var read = PdfDocument.Open(written.Bytes.ToArray());
        var text = string.Concat(read.GetPages().Select(Text));
        Assert.Contains("Costagainstsound", text, StringComparison.Ordinal);
        Assert.Contains("Wherethecheapestdesignchanges", text, StringComparison.Ordinal);
        Assert.All(read.GetPages(), page => Assert.Contains("inside,notfortheclient", Text(page), StringComparison.Ordinal));
    }

    // Where a job lies on somebody's disk is nobody's business; the example was read by its full path.
    [Fact]
    public void No_paper_tells_in_which_folder_a_file_lies()
    {
        foreach (var paper in PaperPack.Write(Barn, [.. PaperList.All.Where(kind => kind.Id != "handover-pack")], SheetSize.A4).Papers.Where(paper => paper.Sheets > 0))
        {
            using var read = PdfDocument.Open(paper.Bytes.ToArray());
            Assert.DoesNotContain(read.GetPages(), page => Text(page).Contains(Repository.Root, StringComparison.Ordinal) || Text(page).Contains("examples/", StringComparison.Ordinal));
        }
    }

    private static string Text(UglyToad.PdfPig.Content.Page page) => string.Concat(page.Letters.Select(letter => letter.Value).Where(letter => !string.IsNullOrWhiteSpace(letter)));
}
